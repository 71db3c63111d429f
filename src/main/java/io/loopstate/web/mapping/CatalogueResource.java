package io.loopstate.web.mapping;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** Reads the lists of what is on file of refrigerants beside their equations. */
final class CatalogueResource {
    private static final String FOLDER = "/refrigerants/";

    private CatalogueResource() {}

    static <T> List<T> read(String file, TypeReference<List<T>> type) {
        try (InputStream in = CatalogueResource.class.getResourceAsStream(FOLDER + file)) {
            return new ObjectMapper().readValue(in, type);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
