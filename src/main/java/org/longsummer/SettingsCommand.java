package org.longsummer;

import java.io.PrintWriter;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists every setting. */
@Command(name = "settings", mixinStandardHelpOptions = true,
        description = "List every setting of serving: as a flag, in the environment, in a file, and what holds now.")
final class SettingsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = SettingSources.FILE_OPTION, paramLabel = "FILE", description = "file of settings; else LONGSUMMER_SETTINGS names it")
    private String file;

    @Override
    public Integer call() {
        CommandLine root = spec.commandLine().getParent();
        SettingSources sources = (SettingSources) spec.commandLine().getDefaultValueProvider();
        PrintWriter out = spec.commandLine().getOut();
        out.println("A flag goes before the environment, the environment before the file.");
        for (OptionSpec option : SettingSources.all(root)) {
            Optional<Map.Entry<String, String>> said = sources.said(option);
            out.println();
            out.println(option.longestName() + (option.arity().max() == 0 ? "" : " " + option.paramLabel()) + ", "
                    + SettingSources.variable(option.longestName()) + ", in the file " + SettingSources.key(option));
            out.println("  " + String.join(" ", option.description()).replaceAll("; (else|default) \\$\\{DEFAULT-VALUE}", "").replaceAll("%n", " "));
            out.println("  now: " + said.map(value -> value.getKey() + ", from the " + value.getValue()).orElse(usual(option)));
        }
        out.println();
        out.println("The keystore's password is taken from the first line of the file that --tls-password-file names, or from LONGSUMMER_TLS_PASSWORD.");
        return 0;
    }

    private static String usual(OptionSpec option) {
        String text = option.defaultValue();
        String usual = text == null ? "" : text.replaceAll("^\\$\\{env:\\w+:-(.*)}$", "$1");
        return usual.isEmpty() || usual.contains("NO_DEFAULT") ? (option.arity().max() == 0 ? "no" : "nothing") + ", as usual" : usual + ", as usual";
    }
}
