package io.loopstate.web.mapping;

import io.loopstate.engine.air.EnthalpyDatum;
import io.loopstate.engine.cycle.Finding;
import io.loopstate.engine.cycle.Step;
import io.loopstate.engine.flash.Equilibrium;
import io.loopstate.engine.fluid.Citation;
import io.loopstate.engine.transport.TransportProperties;
import io.loopstate.units.Atmosphere;
import io.loopstate.units.PressureReference;
import io.loopstate.units.QuantityKind;
import io.loopstate.units.Reading;
import io.loopstate.web.dto.AirBasis;
import io.loopstate.web.dto.AirEnthalpyDatum;
import io.loopstate.web.dto.AtmosphereOrigin;
import io.loopstate.web.dto.Basis;
import io.loopstate.web.dto.EquationOfState;
import io.loopstate.web.dto.Quantity;
import io.loopstate.web.dto.ReferencePoint;
import io.loopstate.web.dto.SurroundingAir;
import io.loopstate.web.dto.TransportSources;
import io.loopstate.web.dto.UnitSet;
import io.loopstate.web.dto.Warning;
import io.loopstate.web.dto.WarningSeverity;
import io.loopstate.web.dto.WorkingStep;
import io.loopstate.web.dto.WorkingTerm;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** What every reply carries so that it can be trusted: basis, warnings, cautions, working. */
public final class Trust {
    private static final List<io.loopstate.web.dto.Source> AIR_SOURCES = List.of(
            new io.loopstate.web.dto.Source(
                    "ASHRAE Handbook - Fundamentals 2017, chapter 1, Psychrometrics (equations from memory)", null),
            new io.loopstate.web.dto.Source(
                    "W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 31 (2002) 387, saturation over water",
                    "10.1063/1.1461829"),
            new io.loopstate.web.dto.Source("IAPWS R14-08 (2011), saturation over ice", null),
            new io.loopstate.web.dto.Source(
                    "A. L. Buck, J. Appl. Meteorol. 20 (1981) 1527, enhancement factor (from memory)", null));

    private final String engineVersion;
    private final Backgrounds backgrounds;

    /** For replies of an engine of this version. */
    public Trust(String engineVersion, SafetyGroups safetyGroups) {
        this.engineVersion = engineVersion;
        backgrounds = new Backgrounds(safetyGroups);
    }

    /** The basis of a reply without transport properties. */
    Basis basis(Input<?> input) {
        return basis(input, input.equilibrium(), null);
    }

    /** The basis of a reply about a fluid that the request does not name. */
    Basis basis(Input<?> input, Equilibrium equilibrium) {
        return basis(input, equilibrium, null);
    }

    /** The basis of a reply about a liquid of which the client gave the properties. */
    Basis basisAsGiven(Input<?> input, Equilibrium inPlaceOf, String liquid) {
        Basis basis = basis(input, inPlaceOf);
        EquationOfState given =
                new EquationOfState("none: density and heat capacity as the request gives them", null, null);
        return new Basis(
                basis.engineVersion(),
                liquid,
                given,
                null,
                null,
                basis.referenceState(),
                basis.atmosphere(),
                basis.unitSystem());
    }

    /** The basis of a reply that can hold transport properties. */
    Basis basisWithTransport(Input<?> input) {
        return basis(
                input,
                input.equilibrium(),
                input.transport().map(Trust::transport).orElse(null));
    }

    /** The basis of a reply about moist air. */
    AirBasis airBasis(Input<?> input, EnthalpyDatum datum) {
        return new AirBasis(
                engineVersion,
                "ideal-gas relations of moist air with measured saturation pressures and enhancement factor",
                AIR_SOURCES,
                AirEnthalpyDatum.valueOf(datum.name()),
                atmosphere(input),
                UnitSet.valueOf(input.output().system().name()));
    }

    static TransportSources transport(TransportProperties transport) {
        return new TransportSources(
                transport.viscositySource().map(Trust::source).orElse(null),
                transport.thermalConductivitySource().map(Trust::source).orElse(null),
                transport.surfaceTensionSource().map(Trust::source).orElse(null));
    }

    private Basis basis(Input<?> input, Equilibrium equilibrium, TransportSources transport) {
        Backgrounds.Background background = backgrounds.of(equilibrium.refrigerant());
        return new Basis(
                engineVersion,
                equilibrium.refrigerant().designation(),
                background.equation(),
                background.blend(),
                transport,
                ReferencePoint.valueOf(equilibrium.referenceState().name()),
                atmosphere(input),
                UnitSet.valueOf(input.output().system().name()));
    }

    static EquationOfState equationOfState(List<Citation> sources) {
        Citation first = sources.get(0);
        return new EquationOfState(
                first.text(),
                first.doi().orElse(null),
                sources.size() == 1
                        ? null
                        : sources.stream().skip(1).map(Trust::source).toList());
    }

    static io.loopstate.web.dto.Source source(Citation citation) {
        return new io.loopstate.web.dto.Source(citation.text(), citation.doi().orElse(null));
    }

    private static SurroundingAir atmosphere(Input<?> input) {
        Atmosphere atmosphere = input.atmosphere();
        Output absolute = input.output().absolute();
        return new SurroundingAir(
                absolute.of(QuantityKind.PRESSURE, atmosphere.pressure()),
                AtmosphereOrigin.valueOf(atmosphere.origin().name()),
                absolute.of(QuantityKind.LENGTH, atmosphere.altitude()));
    }

    List<Warning> warnings(Input<?> input, List<Finding> findings) {
        return warnings(input, findings, List.of());
    }

    /** The likely slips of unit among the inputs, then what the engine found. */
    List<Warning> warnings(Input<?> input, List<Finding> findings, List<UnitSlips.Usual> usual) {
        List<Warning> warnings = new ArrayList<>(UnitSlips.of(input, usual));
        findings.forEach(finding -> warnings.add(warning(input, finding)));
        return warnings;
    }

    private static Warning warning(Input<?> input, Finding finding) {
        return new Warning(
                finding.code().name(),
                WarningSeverity.valueOf(finding.severity().name()),
                finding.message(),
                finding.subject(),
                number(input, finding, finding.value()),
                number(input, finding, finding.limit()),
                finding.basis());
    }

    private static Quantity number(Input<?> input, Finding finding, OptionalDouble value) {
        return finding.kind()
                .map(kind -> input.output().of(EngineKinds.of(kind), value))
                .orElse(null);
    }

    List<String> cautions(Input<?> input) {
        return cautions(input.equilibrium());
    }

    /** The cautions for a refrigerant beside the one that the request is about. */
    List<String> cautions(Equilibrium equilibrium) {
        return backgrounds.of(equilibrium.refrigerant()).cautions();
    }

    /** The cautions of a reply that is about no refrigerant. */
    List<String> airCautions() {
        return Cautions.withoutRefrigerant();
    }

    /** The steps of the engine after those that made absolute pressures; {@code null} where nobody asked. */
    List<WorkingStep> working(Input<?> input, List<Step> steps) {
        return working(input, () -> steps);
    }

    /** As above, of steps that are made only where somebody asked. */
    List<WorkingStep> working(Input<?> input, Supplier<List<Step>> steps) {
        if (!input.explain()) {
            return null;
        }
        List<WorkingStep> working = new ArrayList<>();
        input.readings().forEach((path, reading) -> absolutePressure(input, path, reading, working));
        steps.get().forEach(step -> working.add(step(input, step)));
        return working;
    }

    private static void absolutePressure(Input<?> input, String path, Reading reading, List<WorkingStep> working) {
        PressureReference reference = reading.unit().reference();
        boolean vacuum = reference == PressureReference.VACUUM;
        if (!vacuum && reference != PressureReference.GAUGE) {
            return;
        }
        Output absolute = input.output().absolute();
        double si = reading.toSi(input.atmosphere());
        working.add(new WorkingStep(
                "absolute pressure of " + path,
                vacuum ? "p = p_atmosphere - p_vacuum" : "p = p_gauge + p_atmosphere",
                List.of(
                        new WorkingTerm(
                                vacuum ? "p_vacuum" : "p_gauge",
                                new Quantity(reading.value(), reading.unit().name())),
                        new WorkingTerm(
                                "p_atmosphere",
                                absolute.of(
                                        QuantityKind.PRESSURE,
                                        input.atmosphere().pressure()))),
                new WorkingTerm("p", absolute.of(QuantityKind.PRESSURE, si)),
                "definition"));
    }

    private static WorkingStep step(Input<?> input, Step step) {
        return new WorkingStep(
                step.name(),
                step.formula(),
                step.inputs().stream().map(term -> term(input, term)).toList(),
                term(input, step.result()),
                step.source());
    }

    private static WorkingTerm term(Input<?> input, Step.Term term) {
        // In a formula a pressure has to be absolute.
        return new WorkingTerm(term.symbol(), input.output().absolute().of(EngineKinds.of(term.kind()), term.value()));
    }
}
