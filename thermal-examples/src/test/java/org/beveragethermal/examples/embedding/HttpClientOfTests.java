/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;

/** What a till sends to a server on this machine, and what it hears. */
final class HttpClientOfTests {

    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final HttpClient client = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(PATIENCE)
            .build();
    private final String server;

    HttpClientOfTests(EventServer server) {
        this.server = "http://localhost:" + server.port();
    }

    HttpResponse<String> post(byte[] body) {
        return send(request("/events")
                .header("Content-Type", "application/json; charset=utf-8")
                .POST(HttpRequest.BodyPublishers.ofByteArray(body)));
    }

    HttpResponse<String> post(String body) {
        return post(body.getBytes(StandardCharsets.UTF_8));
    }

    HttpResponse<String> get(String path) {
        return send(request(path).GET());
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(server + path)).timeout(PATIENCE);
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new AssertionError("no answer", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted", e);
        }
    }
}
