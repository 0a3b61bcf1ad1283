package org.longsummer.web;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Looks at a page by axe-core's rules for WCAG 2.2, levels A and AA. */
final class Accessibility {
    private static final String RULES = read();

    private Accessibility() {}

    /** What is wrong, one line a place; empty when nothing is. */
    static List<String> violations(Page page) {
        return found(page, """
                axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }).then(found =>
                  found.violations.flatMap(rule => rule.nodes.map(node => `${rule.id}: ${node.target} ${node.failureSummary}`)))""");
    }

    /** What has a contrast below 7:1 (large text: 4.5:1), as WCAG asks at level AAA. */
    static List<String> tooFaint(Page page) {
        return found(page, """
                axe.run(document, { runOnly: ['color-contrast', 'color-contrast-enhanced'], rules: { 'color-contrast-enhanced': { enabled: true } } })
                  .then(found => found.violations.flatMap(rule => rule.nodes.map(node => `${node.target} ${node.any[0].message}`)))""");
    }

    @SuppressWarnings("unchecked")
    private static List<String> found(Page page, String question) {
        page.evaluate(RULES);
        return (List<String>) page.evaluate(question);
    }

    private static String read() {
        try (InputStream script = Accessibility.class.getResourceAsStream("/axe.min.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
