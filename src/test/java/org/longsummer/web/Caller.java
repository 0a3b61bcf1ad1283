package org.longsummer.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Somebody who asks the server as a browser or a program would: with a cookie that it keeps, an origin, or a key. */
final class Caller {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final HttpClient PLAIN = HttpClient.newHttpClient();

    private final String address;
    private final HttpClient client;
    private final Map<String, String> headers = new LinkedHashMap<>();
    private final Map<String, String> cookies = new LinkedHashMap<>();

    /** @param address of the server, without a slash at its end */
    Caller(String address) {
        this(address, PLAIN);
    }

    Caller(String address, HttpClient client) {
        this.address = address;
        this.client = client;
    }

    Caller(RunningServer server) {
        this(server.address("").replaceFirst("/$", ""));
        headers.put("Origin", address);
    }

    /** What came back. */
    record Reply(int status, JsonNode body, HttpResponse<String> response) {
        Optional<String> header(String name) {
            return response.headers().firstValue(name);
        }

        String text() {
            return response.body();
        }
    }

    /** From now on with this header; null leaves it out. */
    Caller with(String header, String value) {
        if (value == null) {
            headers.remove(header);
        } else {
            headers.put(header, value);
        }
        return this;
    }

    Caller withCookie(String name, String value) {
        cookies.put(name, value);
        return this;
    }

    Map<String, String> cookies() {
        return cookies;
    }

    Reply get(String path) {
        return send("GET", path, null);
    }

    Reply post(String path, Object body) {
        return send("POST", path, body);
    }

    Reply delete(String path) {
        return send("DELETE", path, null);
    }

    Reply signIn(String name, String password) {
        return post("/api/session", Map.of("name", name, "password", password));
    }

    Reply signInOnPhone(String name, String password, String label) {
        return post("/api/session", Map.of("name", name, "password", password, "phone", true, "label", label));
    }

    Reply send(String method, String path, Object body) {
        try {
            HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address + path))
                    .method(method, body == null ? BodyPublishers.noBody() : BodyPublishers.ofString(body instanceof String text ? text
                            : JSON.writeValueAsString(body)));
            if (body != null && !headers.containsKey("Content-Type")) {
                request.header("Content-Type", "application/json");
            }
            headers.forEach(request::header);
            if (!cookies.isEmpty()) {
                request.header("Cookie", String.join("; ", cookies.entrySet().stream().map(each -> each.getKey() + "=" + each.getValue()).toList()));
            }
            return reply(client.send(request.build(), BodyHandlers.ofString()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private Reply reply(HttpResponse<String> response) throws IOException {
        for (String cookie : response.headers().allValues("Set-Cookie")) {
            String[] parts = cookie.split(";")[0].split("=", 2);
            if (parts[1].isEmpty() || cookie.contains("Max-Age=0")) {
                cookies.remove(parts[0]);
            } else {
                cookies.put(parts[0], parts[1]);
            }
        }
        boolean json = response.headers().firstValue("Content-Type").orElse("").contains("json") && !response.body().isBlank();
        return new Reply(response.statusCode(), json ? JSON.readTree(response.body()) : JSON.nullNode(), response);
    }
}
