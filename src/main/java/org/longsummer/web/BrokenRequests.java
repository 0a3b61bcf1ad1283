package org.longsummer.web;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Answers what never became a request that the program could look at; says nothing of the inside. */
final class BrokenRequests extends ErrorHandler {
    private static final byte[] WORDS = "{\"problems\":[{\"field\":\"\",\"given\":\"\",\"limit\":\"This request cannot be understood.\",\"remedy\":\"Check it and send it again.\"}]}"
            .getBytes(StandardCharsets.UTF_8);

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "application/json");
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        response.getHeaders().put("Cache-Control", "no-store");
        response.write(true, ByteBuffer.wrap(WORDS), callback);
        return true;
    }
}
