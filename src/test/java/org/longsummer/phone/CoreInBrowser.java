package org.longsummer.phone;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.longsummer.web.BrowserOnThisMachine;

/** The core as the build compiled it to JavaScript, asked in a real browser. */
final class CoreInBrowser implements AutoCloseable {
    private static final Path CORE = Path.of("target", "classes", "web", "phone", "core.js");
    private static final String ANSWER = """
            async batch => {
              const door = await import('/core.js');
              return batch.map(({ opening, questions }) => {
                const unit = door.open(opening);
                return questions.map(([method, argument]) => unit[method](argument));
              });
            }""";

    private final BrowserOnThisMachine.Started started = BrowserOnThisMachine.start();
    private final Page page = started.browser().newPage();

    CoreInBrowser() {
        page.route("**/*", route -> route.fulfill(new Route.FulfillOptions().setContentType("text/html").setBody("<!doctype html>")));
        page.route("**/core.js", route -> route.fulfill(new Route.FulfillOptions().setContentType("text/javascript").setPath(CORE)));
        page.navigate("http://core.test/");
    }

    @SuppressWarnings("unchecked")
    List<List<String>> answers(List<Questions> batch) {
        return (List<List<String>>) page.evaluate(ANSWER, batch.stream().map(asked -> Map.of("opening", asked.opening(), "questions",
                asked.questions().stream().map(question -> List.of(question.method(), question.argument())).toList())).toList());
    }

    @Override
    public void close() {
        started.close();
    }
}
