package io.loopstate.wiring;

import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.web.dto.Version;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Refrigerants;
import io.loopstate.web.mapping.RequestReader;
import io.loopstate.web.mapping.SafetyGroups;
import io.loopstate.web.mapping.Trust;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import jakarta.validation.Validator;

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
    static Refrigerants refrigerants(Catalog catalog) {
        return new Refrigerants(catalog, new Equilibria());
    }

    @Produces
    @Singleton
    static SafetyGroups safetyGroups() {
        return SafetyGroups.bundled();
    }

    @Produces
    @Singleton
    static Exchange exchange(
            Refrigerants refrigerants, SafetyGroups safetyGroups, Validator validator, Version version) {
        return new Exchange(
                new RequestReader(refrigerants, validator), new Trust(version.engineVersion(), safetyGroups));
    }
}
