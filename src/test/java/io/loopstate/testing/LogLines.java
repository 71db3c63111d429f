package io.loopstate.testing;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.jboss.logmanager.ExtLogRecord;

/** What is logged below a category, as long as it is open. */
public final class LogLines implements AutoCloseable {
    private final List<String> lines = new CopyOnWriteArrayList<>();
    private final Logger logger;
    private final Handler handler = new Handler() {
        @Override
        public void publish(LogRecord entry) {
            lines.add(entry instanceof ExtLogRecord own ? own.getFormattedMessage() : entry.getMessage());
        }

        @Override
        public void flush() {
            // Nothing is kept back.
        }

        @Override
        public void close() {
            // Nothing is open.
        }
    };

    /** Begins to listen. */
    public LogLines(String category) {
        logger = Logger.getLogger(category);
        logger.addHandler(handler);
    }

    /** The lines so far. */
    public List<String> lines() {
        return lines;
    }

    @Override
    public void close() {
        logger.removeHandler(handler);
    }
}
