package org.longsummer.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How the server stands towards the network.
 *
 * @param basePath the path under which everything lies, such as {@code /fleet}; empty for none
 * @param trustsProxy a reverse proxy stands before it, and what that says of the caller is believed
 * @param tls with which it speaks HTTPS
 * @param exposed others than this machine can ask, so that nobody gets in without signing in
 */
public record Front(String basePath, boolean trustsProxy, Optional<Tls> tls, boolean exposed) {
    private static final Pattern BASE_PATH = Pattern.compile("(/[A-Za-z0-9._~-]+)*");
    private static final List<String> PROXY_MARKS = List.of("X-Forwarded-For", "X-Forwarded-Host", "X-Forwarded-Proto", "Forwarded", "Via");
    /** For this machine alone. */
    public static final Front LOCAL = new Front("", false, Optional.empty(), false);

    public Front {
        if (!BASE_PATH.matcher(basePath).matches()) {
            throw new IllegalArgumentException(basePath);
        }
    }

    /** Whether this is a path that everything can lie under. */
    public static boolean isBasePath(String path) {
        return BASE_PATH.matcher(path).matches();
    }

    /** Whether a host's name means this machine alone, all its addresses included. */
    public static boolean isLoopback(String host) {
        try {
            for (InetAddress address : InetAddress.getAllByName(host)) {
                if (!address.isLoopbackAddress()) {
                    return false;
                }
            }
            return true;
        } catch (UnknownHostException e) {
            return false;
        }
    }

    /** Lays everything under the base path, and makes the rest of the program see the caller as this does. */
    void settle(JavalinConfig config) {
        config.router.contextPath = basePath.isEmpty() ? "/" : basePath;
        config.contextResolver.ip = this::address;
        config.contextResolver.host = this::host;
        config.contextResolver.scheme = this::scheme;
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendXPoweredBy(false);
        });
        config.jetty.modifyServer(server -> server.setErrorHandler(new BrokenRequests()));
    }

    /** Where the request comes from; of several hops that a proxy tells, the last is the one that it saw itself. */
    String address(Context request) {
        return forwarded(request, "X-Forwarded-For").orElse(request.req().getRemoteAddr());
    }

    String host(Context request) {
        return forwarded(request, "X-Forwarded-Host").orElse(request.header("Host"));
    }

    String scheme(Context request) {
        return forwarded(request, "X-Forwarded-Proto").filter(scheme -> scheme.equals("http") || scheme.equals("https"))
                .orElse(request.req().getScheme());
    }

    boolean isSecure(Context request) {
        return scheme(request).equals("https");
    }

    /** The caller named this machine as he would who sits at it, and nothing stands between: no other site's name leads here. */
    boolean isAtThisMachine(Context request) {
        String host = Optional.ofNullable(request.header("Host")).orElse("").replaceFirst(":\\d+$", "");
        return List.of("localhost", "127.0.0.1", "[::1]").contains(host) && PROXY_MARKS.stream().allMatch(mark -> request.header(mark) == null);
    }

    /** Of a name with which a browser may be told to insist on HTTPS. */
    boolean isNamed(Context request) {
        String host = Optional.ofNullable(host(request)).orElse("").replaceFirst(":\\d+$", "");
        return !List.of("localhost", "127.0.0.1", "[::1]", "").contains(host);
    }

    private Optional<String> forwarded(Context request, String header) {
        if (!trustsProxy) {
            return Optional.empty();
        }
        String[] hops = Optional.ofNullable(request.header(header)).orElse("").split(",");
        return Optional.of(hops[hops.length - 1].strip()).filter(hop -> !hop.isEmpty());
    }
}
