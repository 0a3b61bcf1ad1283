package org.longsummer;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.longsummer.files.FileRefused;
import org.longsummer.store.StoreRefused;
import org.longsummer.store.Trouble;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;

/** The command line: reads settings, wires the parts, says in words what went wrong. */
@Command(name = "longsummer", mixinStandardHelpOptions = true, versionProvider = Longsummer.Version.class,
        subcommands = {ServeCommand.class, ImportCommand.class, ExportCommand.class, BackupCommand.class, RestoreCommand.class,
            CheckCommand.class, AssessCommand.class, PeopleCommand.class, SettingsCommand.class, DemoDataCommand.class},
        description = "What a roof air conditioner should read in today's weather, and what its history says.%n"
                + "Without a command it serves the pages.%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:done", "1:failed, for a reason that is said", "2:the command line was not understood",
            "3:a file was refused; every problem is listed and nothing was changed"})
public final class Longsummer implements Callable<Integer> {
    static final int FAILED = 1;
    static final int REFUSED = 3;

    @Mixin
    private ServeOptions serve;

    private Longsummer() {}

    public static void main(String[] args) {
        System.exit(run(args, new PrintWriter(System.out, true), new PrintWriter(System.err, true)));
    }

    /** Runs one command and returns its exit code. */
    static int run(String[] args, PrintWriter out, PrintWriter err) {
        CommandLine command = commandLine().setOut(out).setErr(err);
        try {
            SettingSources sources = SettingSources.of(List.of(args), System.getenv());
            Optional<String> misspelt = sources.misspelt(command);
            if (misspelt.isPresent()) {
                err.println(misspelt.get());
                return command.getCommandSpec().exitCodeOnInvalidInput();
            }
            return command.setDefaultValueProvider(sources).execute(args);
        } catch (IOException e) {
            err.println("The file of settings: " + words(e));
            return FAILED;
        }
    }

    static CommandLine commandLine() {
        return new CommandLine(new Longsummer()).setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(Longsummer::misunderstood)
                .setExecutionExceptionHandler((failure, command, parsed) -> failed(failure, command));
    }

    @Override
    public Integer call() throws InterruptedException, IOException {
        return serve.run();
    }

    private static int misunderstood(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        command.getErr().println(e.getMessage());
        command.getErr().println("See: longsummer " + (command.getParent() == null ? "" : command.getCommandName() + " ") + "--help");
        return command.getCommandSpec().exitCodeOnInvalidInput();
    }

    private static int failed(Exception failure, CommandLine command) {
        PrintWriter err = command.getErr();
        if (failure instanceof FileRefused refused) {
            err.println(refused.getMessage());
            err.println(refused.count() + (refused.count() == 1 ? " problem" : " problems") + "; nothing was changed.");
            return REFUSED;
        }
        err.println(words(failure));
        return FAILED;
    }

    private static String words(Throwable failure) {
        Optional<Trouble> trouble = Trouble.in(failure);
        if (trouble.isPresent() && !(failure instanceof StoreRefused)) {
            return trouble.get().limit() + " " + trouble.get().remedy() + file(failure);
        }
        if (failure instanceof UncheckedIOException wrapped) {
            return words(wrapped.getCause());
        }
        if (failure instanceof NoSuchFileException missing) {
            return missing.getFile() + " is not there; check the path.";
        }
        if (failure instanceof IOException) {
            return "Cannot read or write: " + failure.getMessage();
        }
        return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
    }

    private static String file(Throwable failure) {
        Throwable cause = failure instanceof UncheckedIOException ? failure.getCause() : failure;
        return cause instanceof FileSystemException about && about.getFile() != null ? " (" + about.getFile() + ")" : "";
    }

    /** The version as the jar's manifest says it. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Longsummer.class.getPackage().getImplementationVersion();
            return new String[] {"Longsummer " + (version == null ? "(not from a jar)" : version)};
        }
    }
}
