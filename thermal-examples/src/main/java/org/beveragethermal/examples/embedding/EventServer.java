/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.embedding;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * An {@link EventDesk} behind HTTP, on the server of the JDK and this machine's own address only: {@code POST /events}, {@code GET
 * /vessels}, {@code GET /schema/events} and {@code GET /schema/answers}. Who wants it in a network puts something before it that knows who
 * may call.
 */
public final class EventServer implements AutoCloseable {

    private static final int USUAL_PORT = 8080;
    private static final int MOST_PORT = 65_535;
    private static final int THREADS = 4;
    private static final int PATIENCE_S = 5;
    private static final int REFUSED = 2;
    /** What is read of a message that is too long, so that its sender hears why before the connection ends. */
    private static final long MOST_DISCARDED = 16L * EventReader.MOST_BYTES;

    private static final String JSON = "application/json";
    private static final String SCHEMA = "application/schema+json";

    private final HttpServer server;
    private final ExecutorService threads;
    private final EventDesk desk;
    /** One for each exchange under way; whoever closes takes them all and keeps them. */
    private final Semaphore exchanges = new Semaphore(THREADS);

    private EventServer(HttpServer server, EventDesk desk) {
        this.server = server;
        this.desk = desk;
        this.threads = Executors.newFixedThreadPool(THREADS);
    }

    /**
     * Starts a server.
     *
     * @param port port on this machine's own address, 0 for any that is free, at most 65535
     * @param desk what answers
     * @return the server, which runs until it is closed
     * @throws IOException if the port cannot be had
     * @throws IllegalArgumentException if the port is outside its range
     */
    public static EventServer start(int port, EventDesk desk) throws IOException {
        if (port < 0 || port > MOST_PORT) {
            throw new IllegalArgumentException("port " + port + ": expected 0 to " + MOST_PORT);
        }
        HttpServer http = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        EventServer server = new EventServer(http, desk);
        http.setExecutor(server.threads);
        http.createContext("/", server::handle);
        http.start();
        return server;
    }

    /**
     * The port it listens on.
     *
     * @return port
     */
    public int port() {
        return server.getAddress().getPort();
    }

    /** Answers that are being given. */
    int underWay() {
        return THREADS - exchanges.availablePermits();
    }

    /** Ends the server: answers that are under way are given, for up to 5 s, and no others. Closing it again does nothing. */
    @Override
    public void close() {
        if (threads.isShutdown()) {
            return;
        }
        try {
            if (!exchanges.tryAcquire(THREADS, PATIENCE_S, TimeUnit.SECONDS)) {
                exchanges.drainPermits();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        server.stop(0);
        threads.shutdown();
    }

    private record Content(int status, String type, String text) {
        static Content of(EventDesk.Reply reply) {
            return new Content(reply.status(), JSON, reply.json());
        }
    }

    private void handle(HttpExchange exchange) throws IOException {
        if (!exchanges.tryAcquire()) {
            exchange.close();
            return;
        }
        try (exchange) {
            Content content = answer(exchange);
            byte[] bytes = content.text().getBytes(StandardCharsets.UTF_8);
            exchange.getResponseHeaders().set("Content-Type", content.type());
            exchange.getResponseHeaders().set("X-Content-Type-Options", "nosniff");
            boolean head = exchange.getRequestMethod().equals("HEAD");
            exchange.sendResponseHeaders(content.status(), head ? -1 : bytes.length);
            if (!head) {
                exchange.getResponseBody().write(bytes);
            }
        } finally {
            exchanges.release();
        }
    }

    private Content answer(HttpExchange exchange) throws IOException {
        try {
            return content(exchange);
        } catch (BadMessage refusal) {
            return Content.of(EventDesk.refusal(refusal));
        }
    }

    private Content content(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath();
        return switch (path) {
            case "/events" -> {
                require(exchange, "POST");
                yield Content.of(desk.post(body(exchange)));
            }
            case "/vessels" -> {
                require(exchange, "GET");
                yield Content.of(desk.vessels());
            }
            case "/schema/events" -> {
                require(exchange, "GET");
                yield new Content(200, SCHEMA, EventDesk.eventsSchema());
            }
            case "/schema/answers" -> {
                require(exchange, "GET");
                yield new Content(200, SCHEMA, EventDesk.answersSchema());
            }
            default -> throw new BadMessage(404, "path", path, "/events, /vessels, /schema/events or /schema/answers");
        };
    }

    private static void require(HttpExchange exchange, String method) {
        if (!exchange.getRequestMethod().equals(method)) {
            exchange.getResponseHeaders().set("Allow", method);
            throw new BadMessage(405, "method", exchange.getRequestMethod(), method);
        }
    }

    /** The message, read to its limit and no further; only JSON, which no page of another site may send unasked. */
    private static byte[] body(HttpExchange exchange) throws IOException {
        String type = Optional.ofNullable(exchange.getRequestHeaders().getFirst("Content-Type"))
                .orElse("is missing");
        try (InputStream in = exchange.getRequestBody()) {
            byte[] bytes = in.readNBytes(EventReader.MOST_BYTES + 1);
            if (bytes.length > EventReader.MOST_BYTES) {
                discard(in);
                throw EventReader.tooLong();
            }
            if (!type.split(";", 2)[0].strip().toLowerCase(Locale.ROOT).equals(JSON)) {
                throw new BadMessage(415, "Content-Type", type, JSON);
            }
            return bytes;
        }
    }

    private static void discard(InputStream in) throws IOException {
        byte[] waste = new byte[1 << 13];
        long read = 0;
        for (int n = in.read(waste); n >= 0 && read < MOST_DISCARDED; n = in.read(waste)) {
            read += n;
        }
    }

    /**
     * Serves an invented house until the program is ended.
     *
     * @param args the port, or nothing for 8080
     */
    public static void main(String[] args) {
        // A client that sends a byte an hour does not hold a thread for ever; answers do not wait for an
        // acknowledgement of their heads.
        Map.of("sun.net.httpserver.maxReqTime", "30", "sun.net.httpserver.nodelay", "true")
                .forEach((name, value) -> {
                    if (System.getProperty(name) == null) {
                        System.setProperty(name, value);
                    }
                });
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int status = run(args, out, err);
        if (status != 0) {
            System.exit(status);
        }
    }

    /** Starts what goes on running; says so, or why not. */
    static int run(String[] args, PrintStream out, PrintStream err) {
        try {
            int port = args.length == 0 ? USUAL_PORT : Integer.parseInt(args[0]);
            EventServer server = start(port, EventDesk.of(House.tracker(), Locale.ENGLISH));
            Runtime.getRuntime().addShutdownHook(new Thread(server::close, "closing the server"));
            out.println("Listening on http://localhost:" + server.port() + " (end it with Ctrl+C)");
            return 0;
        } catch (NumberFormatException e) {
            err.println("port '" + args[0] + "': expected a number from 0 to " + MOST_PORT);
        } catch (IllegalArgumentException | IOException e) {
            err.println("cannot serve: " + e.getMessage());
        }
        return REFUSED;
    }
}
