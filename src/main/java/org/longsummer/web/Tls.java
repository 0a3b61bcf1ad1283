package org.longsummer.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.Collections;
import org.eclipse.jetty.http.HttpVersion;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** A certificate with its private key, as a PKCS #12 or JKS keystore: with it the server speaks HTTPS, TLS 1.2 and 1.3, and nothing else. */
public final class Tls {
    private final KeyStore store;
    private final String password;

    private Tls(KeyStore store, String password) {
        this.store = store;
        this.password = password;
    }

    /**
     * Reads a keystore.
     *
     * @throws IOException when it cannot be read, is none, has no private key or another password
     */
    public static Tls read(Path file, String password) throws IOException {
        if (!Files.isReadable(file)) {
            throw new IOException(file + " is not there, or cannot be read");
        }
        try {
            KeyStore store = KeyStore.getInstance(file.toFile(), password.toCharArray());
            for (String alias : Collections.list(store.aliases())) {
                if (store.isKeyEntry(alias)) {
                    store.getKey(alias, password.toCharArray());
                    return new Tls(store, password);
                }
            }
        } catch (GeneralSecurityException e) {
            throw new IOException(file + " is not a keystore that can be opened with this password", e);
        }
        throw new IOException(file + " holds no private key");
    }

    Connector connector(Server server, HttpConfiguration plain, String host, int port) {
        SslContextFactory.Server context = new SslContextFactory.Server();
        context.setKeyStore(store);
        context.setKeyStorePassword(password);
        context.setIncludeProtocols("TLSv1.3", "TLSv1.2");
        HttpConfiguration secure = new HttpConfiguration(plain);
        secure.addCustomizer(new SecureRequestCustomizer(false));
        ServerConnector connector = new ServerConnector(server, new SslConnectionFactory(context, HttpVersion.HTTP_1_1.asString()),
                new HttpConnectionFactory(secure));
        connector.setHost(host);
        connector.setPort(port);
        return connector;
    }
}
