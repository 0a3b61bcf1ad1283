package org.longsummer;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.longsummer.access.PasswordRules;
import org.longsummer.access.Passwords;
import org.longsummer.access.Person;
import org.longsummer.access.Reach;
import org.longsummer.access.Role;
import org.longsummer.store.Actor;
import org.longsummer.store.Depot;
import org.longsummer.store.People;
import org.longsummer.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/**
 * The people with an account, from the machine that holds the record: the first administrator is made here, and whoever is locked out
 * is let in again. Passwords are asked for, never taken from the command line, where others could read them.
 */
@Command(name = "people", mixinStandardHelpOptions = true,
        description = "The people with an account: add, password, close, list. Passwords are asked for, or read from standard input.")
final class PeopleCommand implements Callable<Integer> {
    /** Whoever sits at the machine that holds the record, by the name under which the machine knows him. */
    static final Actor COMMAND_LINE = new Actor(System.getProperty("user.name", "somebody"), Optional.empty(), "command line");

    @Spec
    private CommandSpec spec;

    @Option(names = "--data", paramLabel = "DIR", defaultValue = "${env:LONGSUMMER_DATA:-longsummer-data}", scope = ScopeType.INHERIT,
            description = "directory of the record, made when it is not there; default ${DEFAULT-VALUE}")
    private Path data;

    @Override
    public Integer call() {
        throw new ParameterException(spec.commandLine(), "people: say what to do: add, password, close or list.");
    }

    @Command(name = "add", mixinStandardHelpOptions = true, description = "Add somebody; the password is asked for.")
    int add(@Parameters(paramLabel = "NAME", description = "by which he signs in and stands in the record; cannot be changed later") String name,
            @Option(names = "--role", paramLabel = "ROLE", defaultValue = "technician",
                    description = "technician, manager or administrator; default ${DEFAULT-VALUE}") Role role,
            @Option(names = "--depot", paramLabel = "NAME", description = "a depot that he sees, once for each; without it, all") List<String> depots)
            throws IOException {
        if (name.isBlank() || name.length() > Person.LONGEST_NAME || name.chars().anyMatch(Character::isISOControl)) {
            throw new ParameterException(spec.commandLine(), "NAME takes 1 to " + Person.LONGEST_NAME + " characters.");
        }
        try (Store store = open()) {
            if (store.people().named(name).isPresent()) {
                throw new ParameterException(spec.commandLine(), "Somebody has the name " + name + " already, maybe with a closed account.");
            }
            String password = newPassword(store, name);
            Reach reach = depots == null ? Reach.EVERYWHERE : Reach.of(depots);
            Person person = store.people().add(name, role, reach).orElseThrow();
            store.people().setPassword(person.id(), new Passwords().hash(password), Optional.empty());
            say(person.name() + " may sign in as " + role.word() + ".");
        }
        return 0;
    }

    @Command(name = "password", mixinStandardHelpOptions = true,
            description = "Give somebody a new password, which is asked for; all his sessions and phones end.")
    int password(@Parameters(paramLabel = "NAME") String name) throws IOException {
        try (Store store = open()) {
            Person person = named(store, name);
            store.people().setPassword(person.id(), new Passwords().hash(newPassword(store, person.name())), Optional.empty());
            say(person.name() + " has a new password; his sessions and phones are ended.");
        }
        return 0;
    }

    @Command(name = "close", mixinStandardHelpOptions = true, description = "Close somebody's account; all his sessions, phones and programs end.")
    int close(@Parameters(paramLabel = "NAME") String name) {
        try (Store store = open()) {
            Person person = named(store, name);
            if (store.people().close(person.id()) == People.Outcome.LAST_ADMINISTRATOR) {
                throw new ParameterException(spec.commandLine(), "Nobody else can administer; add another administrator first.");
            }
            say(person.name() + "'s account is closed.");
        }
        return 0;
    }

    @Command(name = "list", mixinStandardHelpOptions = true, description = "List all people with their role and the depots that they see.")
    int list() {
        try (Store store = open()) {
            for (Person person : store.people().all()) {
                say(person.name() + "\t" + person.role().word() + "\t" + (person.reach().everywhere() ? "all depots"
                        : String.join(", ", person.reach().depots())) + (person.active() ? person.hasPassword() ? "" : "\tno password yet" : "\tclosed"));
            }
        }
        return 0;
    }

    private Store open() {
        Store store = Store.open(data);
        store.acting().begin(COMMAND_LINE);
        return store;
    }

    private Person named(Store store, String name) {
        return store.people().named(name).orElseThrow(() -> new ParameterException(spec.commandLine(),
                "Nobody has the name " + name + "; see: longsummer people list"));
    }

    private String newPassword(Store store, String name) throws IOException {
        String password = askedPassword(name);
        List<String> words = new ArrayList<>(List.of(name));
        store.depots().all().stream().map(Depot::name).forEach(words::add);
        PasswordRules.objection(password, words).ifPresent(objection -> {
            throw new ParameterException(spec.commandLine(), objection.limit() + " " + objection.remedy());
        });
        return password;
    }

    /** From the keyboard, unseen and twice; or the first line of standard input, where that comes from a file or another program. */
    private String askedPassword(String name) throws IOException {
        Console console = System.console();
        if (console == null) {
            String line = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).readLine();
            return Optional.ofNullable(line).orElse("");
        }
        char[] first = console.readPassword("A password for %s: ", name);
        char[] second = console.readPassword("The same again: ");
        if (first == null || !Arrays.equals(first, second)) {
            throw new ParameterException(spec.commandLine(), "The two were not the same; nothing was changed.");
        }
        return new String(first);
    }

    private void say(String line) {
        spec.commandLine().getOut().println(line);
    }
}
