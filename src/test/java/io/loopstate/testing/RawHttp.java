package io.loopstate.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Sends bytes as they are: HTTP clients repair or refuse the requests that these tests are about. */
public final class RawHttp {
    private RawHttp() {}

    /** Status, head and body of a reply. */
    public record Reply(int status, String head, String body) {
        /** Value of a header, empty if absent. */
        public String header(String name) {
            for (String line : head.split("\r\n")) {
                if (line.toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT) + ":")) {
                    return line.substring(name.length() + 1).strip();
                }
            }
            return "";
        }
    }

    /** One request without a body. */
    public static Reply send(URI server, String method, String target, String... headers) {
        return exchange(server, head(method, target, headers) + "\r\n");
    }

    /** One request with a body in chunks, so that its length is not announced. */
    public static Reply sendInChunks(URI server, String target, String chunk, int count) {
        return sendInChunks(server, target, "application/json", chunk, count);
    }

    /** The same of another type. */
    public static Reply sendInChunks(URI server, String target, String type, String chunk, int count) {
        String size = Integer.toHexString(chunk.length());
        String body = (size + "\r\n" + chunk + "\r\n").repeat(count) + "0\r\n\r\n";
        String head = head("POST", target, "Content-Type: " + type, "Transfer-Encoding: chunked");
        return exchange(server, head + "\r\n" + body);
    }

    private static String head(String method, String target, String... headers) {
        StringBuilder head = new StringBuilder(method + ' ' + target + " HTTP/1.1\r\nHost: localhost\r\n");
        for (String header : headers) {
            head.append(header).append("\r\n");
        }
        return head.append("Connection: close\r\n").toString();
    }

    private static Reply exchange(URI server, String request) {
        try (Socket socket = new Socket(server.getHost(), server.getPort())) {
            socket.setSoTimeout(20_000);
            Thread writer = new Thread(() -> write(socket, request));
            writer.start();
            String reply = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            writer.join();
            int gap = reply.indexOf("\r\n\r\n");
            String head = reply.substring(0, gap);
            return new Reply(Integer.parseInt(head.split(" ")[1]), head, reply.substring(gap + 4));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void write(Socket socket, String request) {
        try {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
        } catch (IOException e) {
            // The server may close before it has read everything; the reply tells.
        }
    }
}
