package io.loopstate.wiring;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.loopstate.engine.flash.Equilibria;
import io.loopstate.engine.fluid.Catalog;
import io.loopstate.engine.transport.TransportLibrary;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.Refrigerants;
import io.loopstate.web.mapping.RequestReader;
import io.loopstate.web.mapping.SafetyGroups;
import io.loopstate.web.mapping.Trust;

/** The service without a server, for measurements. */
public final class Assembly {
    private Assembly() {}

    /** From requests to replies. */
    public static Exchange exchange() {
        Catalog catalog = Catalog.bundled();
        Refrigerants refrigerants = new Refrigerants(catalog, new Equilibria(), new TransportLibrary(catalog));
        return new Exchange(
                new RequestReader(refrigerants, Constraints.validator()),
                new Trust("measured", SafetyGroups.bundled()));
    }

    /** JSON as the service reads and writes it. */
    public static ObjectMapper mapper() {
        ObjectMapper mapper = new ObjectMapper();
        new JsonSettings().customize(mapper);
        return mapper;
    }
}
