package io.loopstate.wiring;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.transport.TransportLibrary;
import io.loopstate.web.dto.Version;
import io.loopstate.web.mapping.Catalogue;
import io.loopstate.web.mapping.CatalogueFacts;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Refrigerants;
import io.loopstate.web.mapping.RequestReader;
import io.loopstate.web.mapping.Trust;
import io.loopstate.web.mapping.UnitList;
import io.loopstate.web.page.FrontPages;
import io.loopstate.web.verification.Verification;
import io.loopstate.web.verify.Answers;
import io.loopstate.web.verify.Verifier;
import io.loopstate.wiring.guard.Access;
import io.loopstate.wiring.guard.Deadlines;
import io.loopstate.wiring.telemetry.EngineErrors;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.Map;

/** Puts the engine behind the resources. */
final class Calculations {
    private Calculations() {}

    @Produces
    @Singleton
    static Catalog catalog() {
        return Catalog.bundled();
    }

    @Produces
    @Singleton
    static StartupFact refrigerantCount(Catalog catalog) {
        return new StartupFact(
                "refrigerants", Integer.toString(catalog.designations().size()));
    }

    @Produces
    @Singleton
    static Equilibria equilibria() {
        return new Equilibria();
    }

    @Produces
    @Singleton
    static Refrigerants refrigerants(Catalog catalog, Equilibria equilibria) {
        return new Refrigerants(catalog, equilibria, new TransportLibrary(catalog));
    }

    @Produces
    @Singleton
    static CatalogueFacts facts() {
        return CatalogueFacts.bundled();
    }

    @Produces
    @Singleton
    static RequestReader reader(Refrigerants refrigerants) {
        return new RequestReader(refrigerants, Constraints.validator());
    }

    @Produces
    @Singleton
    static Exchange exchange(
            RequestReader reader, CatalogueFacts facts, Version version, Deadlines deadlines, EngineErrors errors) {
        return new Exchange(
                reader, new Trust(version.engineVersion(), facts.safetyGroups()), deadlines::current, errors);
    }

    @Produces
    @Singleton
    static Answers answers(Exchange exchange, ObjectMapper mapper) {
        return new Answers(exchange, mapper);
    }

    @Produces
    @Singleton
    static Verifier verifier(Answers answers, Version version) {
        return new Verifier(answers, version.engineVersion());
    }

    @Produces
    @Singleton
    static Verification verification(Answers answers, Version version) {
        return new Verification(answers, version.engineVersion());
    }

    @Produces
    @Singleton
    static Catalogue catalogue(Refrigerants refrigerants, RequestReader reader, CatalogueFacts facts) {
        return new Catalogue(refrigerants, reader, facts);
    }

    /** Made with the first page: the list of refrigerants reads every coefficient file. */
    @Produces
    @Singleton
    static FrontPages pages(
            Exchange exchange,
            ObjectMapper mapper,
            Catalogue catalogue,
            UnitList units,
            Access access,
            Version version) {
        return new FrontPages(
                exchange,
                mapper,
                catalogue.list(Map.of()).refrigerants(),
                units.list(Map.of()),
                access.keyed(),
                version);
    }

    @Produces
    @Singleton
    static UnitList units(RequestReader reader) {
        return new UnitList(reader);
    }
}
