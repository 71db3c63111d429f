package io.loopstate.wiring;

import io.loopstate.web.dto.Version;
import io.quarkus.arc.All;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.jboss.logging.Logger;

/** Logs one line when the service is ready; the port opens only after this. */
@ApplicationScoped
public class Startup {
    private static final Logger LOG = Logger.getLogger(Startup.class);

    private final Version version;
    private final List<StartupFact> facts;

    /** Called by the container. */
    @Inject
    public Startup(Version version, @All List<StartupFact> facts) {
        this.version = version;
        this.facts = facts;
    }

    void started(@Observes StartupEvent event) {
        long milliseconds = System.currentTimeMillis()
                - ManagementFactory.getRuntimeMXBean().getStartTime();
        StringBuilder line = new StringBuilder("started version=")
                .append(version.engineVersion())
                .append(" commit=")
                .append(version.commit() == null ? "unknown" : version.commit())
                .append(" java=")
                .append(Runtime.version())
                .append(" startupMilliseconds=")
                .append(milliseconds);
        facts.forEach(fact -> line.append(' ').append(fact.key()).append('=').append(fact.value()));
        LOG.info(line);
    }
}
