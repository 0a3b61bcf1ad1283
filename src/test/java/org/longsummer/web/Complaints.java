package org.longsummer.web;

import com.microsoft.playwright.Page;
import java.util.List;

/** Notes whatever should not happen while a page is used: its errors, and anything asked of another host than the test's server. */
final class Complaints {
    private Complaints() {}

    static void note(Page page, RunningServer server, List<String> complaints) {
        page.onPageError(complaints::add);
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") && !message.text().contains("status of 4")) {
                complaints.add(message.text());
            }
        });
        page.onRequest(request -> {
            if (!request.url().startsWith(server.address("")) && !request.url().startsWith("data:") && !request.url().startsWith("blob:")) {
                complaints.add("asked another host: " + request.url());
            }
        });
    }
}
