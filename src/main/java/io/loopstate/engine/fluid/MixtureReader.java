package io.loopstate.engine.fluid;

import io.loopstate.engine.eos.BinaryPair;
import io.loopstate.engine.eos.MixtureModel;
import io.loopstate.engine.eos.ResidualTerm;
import io.loopstate.engine.fluid.PairOrigin.Basis;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Builds mixtures from pure fluids and the interaction parameters in {@code src/main/resources/mixtures}. */
final class MixtureReader {
    private static final String LORENTZ_BERTHELOT = "Lorentz-Berthelot";

    /** Both designations, the one of the pair's order first. */
    private record Key(String first, String second) {}

    private record Pair(JsonObject json, Citation source, Optional<String> note) {}

    private final Map<Key, Pair> pairs = new HashMap<>();
    private final Map<String, List<ResidualTerm>> departures = new HashMap<>();

    MixtureReader(JsonObject pairs, JsonObject departures, JsonObject notes) {
        departures
                .objects("departures")
                .forEach(d -> this.departures.put(d.text("name"), TermReader.residual(d.objects("terms"))));
        JsonObject sources = pairs.object("sources");
        for (JsonObject pair : pairs.objects("pairs")) {
            JsonObject source = sources.object(pair.text("source"));
            Citation citation = new Citation(source.text("citation"), source.optionalText("doi"));
            this.pairs.put(key(pair), new Pair(pair, citation, Optional.empty()));
        }
        notes.objects("notes").forEach(this::annotate);
    }

    /** A note may name the pair in either order. */
    private void annotate(JsonObject note) {
        Key key = key(note);
        Key known = pairs.containsKey(key) ? key : new Key(key.second(), key.first());
        Pair pair = pairs.get(known);
        if (pair == null) {
            throw new IllegalArgumentException("a note on the pair " + key + ", which has no parameters");
        }
        pairs.put(known, new Pair(pair.json(), pair.source(), Optional.of(note.text("note"))));
    }

    private static Key key(JsonObject json) {
        List<String> components = json.optionalTexts("components");
        return new Key(components.get(0), components.get(1));
    }

    /** A mixture by mass. */
    Mixture mixture(String designation, List<Fluid> fluids, double[] massFractions) {
        double moles = 0;
        for (int i = 0; i < massFractions.length; i++) {
            moles += massFractions[i] / fluids.get(i).molarMass();
        }
        List<Mixture.Component> components = new ArrayList<>();
        for (int i = 0; i < massFractions.length; i++) {
            Fluid fluid = fluids.get(i);
            components.add(
                    new Mixture.Component(fluid, massFractions[i], massFractions[i] / fluid.molarMass() / moles));
        }
        List<BinaryPair> interactions = new ArrayList<>();
        List<PairOrigin> origins = new ArrayList<>();
        for (int i = 0; i < fluids.size(); i++) {
            for (int j = i + 1; j < fluids.size(); j++) {
                add(fluids, i, j, interactions, origins);
            }
        }
        MixtureModel model = new MixtureModel(fluids.stream().map(Fluid::model).toList(), interactions);
        return new Mixture(designation, components, origins, model);
    }

    /** The betas belong to the order in which the source names the components. */
    private void add(List<Fluid> fluids, int i, int j, List<BinaryPair> interactions, List<PairOrigin> origins) {
        String a = fluids.get(i).designation();
        String b = fluids.get(j).designation();
        Pair forward = pairs.get(new Key(a, b));
        Pair backward = pairs.get(new Key(b, a));
        if (forward != null) {
            interactions.add(interaction(forward.json(), i, j));
            origins.add(origin(forward, a, b));
        } else if (backward != null) {
            interactions.add(interaction(backward.json(), j, i));
            origins.add(origin(backward, b, a));
        } else {
            interactions.add(new BinaryPair(i, j, 1, 1, 1, 1, 0, List.of()));
            origins.add(new PairOrigin(
                    a, b, Basis.MISSING, Optional.of(LORENTZ_BERTHELOT), Optional.empty(), Optional.empty()));
        }
    }

    private BinaryPair interaction(JsonObject json, int first, int second) {
        double weight = json.number("F");
        return new BinaryPair(
                first,
                second,
                json.number("betaT"),
                json.number("gammaT"),
                json.number("betaV"),
                json.number("gammaV"),
                weight,
                weight == 0 ? List.of() : departure(json.text("departure")));
    }

    private List<ResidualTerm> departure(String name) {
        List<ResidualTerm> terms = departures.get(name);
        if (terms == null) {
            throw new IllegalArgumentException("no departure function " + name);
        }
        return terms;
    }

    private static PairOrigin origin(Pair pair, String first, String second) {
        JsonObject json = pair.json();
        boolean estimated = json.flag("estimated");
        return new PairOrigin(
                first,
                second,
                estimated ? Basis.ESTIMATED : Basis.FITTED,
                estimated ? json.optionalText("rule") : Optional.empty(),
                Optional.of(pair.source()),
                pair.note());
    }
}
