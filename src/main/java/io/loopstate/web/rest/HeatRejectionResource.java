package io.loopstate.web.rest;

import com.fasterxml.jackson.databind.JsonNode;
import io.loopstate.web.dto.AirSideReply;
import io.loopstate.web.dto.AirSideRequest;
import io.loopstate.web.dto.CoilReply;
import io.loopstate.web.dto.CoilRequest;
import io.loopstate.web.dto.DutyReply;
import io.loopstate.web.dto.DutyRequest;
import io.loopstate.web.dto.EvaporatingCoilReply;
import io.loopstate.web.dto.EvaporatingCoilRequest;
import io.loopstate.web.dto.GasCoolerReply;
import io.loopstate.web.dto.GasCoolerRequest;
import io.loopstate.web.dto.WaterSideReply;
import io.loopstate.web.dto.WaterSideRequest;
import io.loopstate.web.mapping.AirSideMapping;
import io.loopstate.web.mapping.CoilMapping;
import io.loopstate.web.mapping.DutyMapping;
import io.loopstate.web.mapping.EvaporatingCoilMapping;
import io.loopstate.web.mapping.Exchange;
import io.loopstate.web.mapping.GasCoolerMapping;
import io.loopstate.web.mapping.WaterSideMapping;
import io.smallrye.common.annotation.Blocking;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Where the heat goes. */
@Path("/v1/heat-rejection")
@Produces(MediaType.APPLICATION_JSON)
@NonBlocking
@Tag(
        name = "heat-rejection",
        description = "Where the heat goes: coils, their air and water, and a whole machine in balance.")
public class HeatRejectionResource {
    private static final String DUTY =
            "The heat that a condenser or gas cooler has to give off, per mass and in all, split into desuperheating, "
                    + "condensing and subcooling, and the heat rejection factor. From states in the condenser, from the "
                    + "compression that leads there, from capacity and power of the machine, or from several of these, "
                    + "which then check each other. Hermetic and open compressors and oil coolers are understood.";
    private static final String AIR_SIDE =
            "Airflow, entering air, leaving air and heat of a coil: any three give the fourth, with real moist air at this "
                    + "altitude. Splits an evaporator's heat into sensible and latent, shows what the factors 1.08, 4.5 and "
                    + "0.68 are here, and, given the refrigerant's temperature, condensing over ambient, approach and "
                    + "conductance.";
    private static final String WATER_SIDE =
            "Flow, entering and leaving temperature and heat of the water of a condenser or chiller: any three give the fourth, "
                    + "with pure water by its own equation of state, and what the factor 500 is here. Given the refrigerant's "
                    + "temperature, approach and conductance; with a cooling tower, evaporation, bleed, make-up and approach to "
                    + "the wet bulb. Mixtures with glycol carry less heat: that is warned of, not calculated.";
    private static final String COIL =
            "An air-cooled condensing coil, zone by zone (desuperheating, condensing with glide, subcooling) with effectiveness "
                    + "and transfer units. From readings its conductance, and how clean it is; from its conductance the condensing "
                    + "level on any day, with the fan at part speed or standing still, and with dirt. Says where refrigerant and "
                    + "air come closest, or why there is no balance.";

    private static final String EVAPORATING_COIL =
            "An air-cooled evaporating coil: boiling and superheating zone with effectiveness and transfer units, and a surface that "
                    + "dries the air where it lies below its dew point. From readings its dry conductance, and how clean it is; from "
                    + "its conductance the evaporating level for a flow or a load, sensible and latent heat, condensate and leaving "
                    + "air, with the fan at part speed or standing still, and with dirt. Warns of frost and of liquid.";

    private static final String GAS_COOLER =
            "An air-cooled gas cooler above the critical pressure, in counter or cross flow, with the properties along its isobar: "
                    + "from readings its conductance, and how clean it is; from its conductance the temperature at which the "
                    + "refrigerant leaves at this pressure, with the fan at part speed or standing still, and with dirt. Says where "
                    + "refrigerant and air come closest, inside the coil or at its end.";

    private final Exchange exchange;

    /** Called by the container. */
    @Inject
    public HeatRejectionResource(Exchange exchange) {
        this.exchange = exchange;
    }

    /** The duty of a condenser, from a query. */
    @GET
    @Path("/duty")
    @Operation(operationId = "getDuty", summary = "The heat that a condenser has to give off", description = DUTY)
    public DutyReply duty(@Context UriInfo uri) {
        return exchange.answer(DutyMapping.OPERATION, uri.getQueryParameters());
    }

    /** The duty of a condenser, from a body. */
    @POST
    @Path("/duty")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateDuty", summary = "The heat that a condenser has to give off", description = DUTY)
    public DutyReply duty(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = DutyRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(DutyMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** The air of a coil, from a query. */
    @GET
    @Path("/air-side")
    @Operation(operationId = "getAirSide", summary = "Airflow, air and heat of a coil", description = AIR_SIDE)
    public AirSideReply airSide(@Context UriInfo uri) {
        return exchange.answer(AirSideMapping.OPERATION, uri.getQueryParameters());
    }

    /** The air of a coil, from a body. */
    @POST
    @Path("/air-side")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateAirSide", summary = "Airflow, air and heat of a coil", description = AIR_SIDE)
    public AirSideReply airSide(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = AirSideRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(AirSideMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** The water of a coil, from a query. */
    @GET
    @Path("/water-side")
    @Operation(operationId = "getWaterSide", summary = "Flow, water and heat of a coil", description = WATER_SIDE)
    public WaterSideReply waterSide(@Context UriInfo uri) {
        return exchange.answer(WaterSideMapping.OPERATION, uri.getQueryParameters());
    }

    /** The water of a coil, from a body. */
    @POST
    @Path("/water-side")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateWaterSide", summary = "Flow, water and heat of a coil", description = WATER_SIDE)
    public WaterSideReply waterSide(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = WaterSideRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(WaterSideMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** A condensing coil, from a query. */
    @GET
    @Path("/coil")
    @Operation(operationId = "getCoil", summary = "A condensing coil, rated or at work", description = COIL)
    public CoilReply coil(@Context UriInfo uri) {
        return exchange.answer(CoilMapping.OPERATION, uri.getQueryParameters());
    }

    /** A condensing coil, from a body. */
    @POST
    @Path("/coil")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateCoil", summary = "A condensing coil, rated or at work", description = COIL)
    public CoilReply coil(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = CoilRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(CoilMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** An evaporating coil, from a query. */
    @GET
    @Path("/evaporating-coil")
    @Operation(
            operationId = "getEvaporatingCoil",
            summary = "An evaporating coil, rated or at work",
            description = EVAPORATING_COIL)
    public EvaporatingCoilReply evaporatingCoil(@Context UriInfo uri) {
        return exchange.answer(EvaporatingCoilMapping.OPERATION, uri.getQueryParameters());
    }

    /** An evaporating coil, from a body. */
    @POST
    @Path("/evaporating-coil")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "calculateEvaporatingCoil",
            summary = "An evaporating coil, rated or at work",
            description = EVAPORATING_COIL)
    public EvaporatingCoilReply evaporatingCoil(
            @RequestBody(
                            required = true,
                            content = @Content(schema = @Schema(implementation = EvaporatingCoilRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(EvaporatingCoilMapping.OPERATION, body, uri.getQueryParameters());
    }

    /** A gas cooler, from a query. */
    @GET
    @Path("/gas-cooler")
    @Blocking
    @Operation(operationId = "getGasCooler", summary = "A gas cooler, rated or at work", description = GAS_COOLER)
    public GasCoolerReply gasCooler(@Context UriInfo uri) {
        return exchange.answer(GasCoolerMapping.OPERATION, uri.getQueryParameters());
    }

    /** A gas cooler, from a body. */
    @POST
    @Path("/gas-cooler")
    @Blocking
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(operationId = "calculateGasCooler", summary = "A gas cooler, rated or at work", description = GAS_COOLER)
    public GasCoolerReply gasCooler(
            @RequestBody(required = true, content = @Content(schema = @Schema(implementation = GasCoolerRequest.class)))
                    JsonNode body,
            @Context UriInfo uri) {
        return exchange.answer(GasCoolerMapping.OPERATION, body, uri.getQueryParameters());
    }
}
