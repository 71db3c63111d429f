import client.ApiClient;
import client.ApiException;
import client.api.CyclePointsApi;
import client.api.CyclePointsApi.APICalculateDesignCycleRequest;
import client.api.PropertiesApi;
import client.api.PropertiesApi.APIGetSaturationRequest;
import client.model.DesignReply;
import client.model.DesignRequest;
import client.model.Pressure;
import client.model.Problem;
import client.model.SaturationLevel;
import client.model.SpecificEnergy;
import client.model.Temperature;
import client.model.TemperatureDifference;
import java.util.List;

/** What the generated client gets from a service: an answer in SI and in IP, one by a query, and what a refusal says. */
public class Call {
    public static void main(String[] arguments) throws Exception {
        ApiClient client = new ApiClient();
        client.updateBaseUri(arguments[0]);
        CyclePointsApi cyclePoints = new CyclePointsApi(client);
        for (String units : List.of("SI", "IP")) {
            SpecificEnergy effect = design(cyclePoints, "R-134a", units).getPerformance().getRefrigeratingEffect();
            System.out.println(units + ' ' + effect.getValue() + ' ' + effect.getUnit());
        }
        Pressure chart = new PropertiesApi(client)
                .getSaturation(APIGetSaturationRequest.newBuilder()
                        .refrigerant("R-290")
                        .temperature("-20 degF")
                        .units("IP,pressure=psig")
                        .build())
                .getDew()
                .getPressure();
        System.out.println("chart " + chart.getValue() + ' ' + chart.getUnit());
        try {
            design(cyclePoints, "R-134", "SI");
        } catch (ApiException refused) {
            Problem problem = ApiClient.createDefaultObjectMapper().readValue(refused.getResponseBody(), Problem.class);
            System.out.println("refused " + problem.getStatus() + ' '
                    + problem.getErrors().get(0).getPointer());
        }
    }

    private static DesignReply design(CyclePointsApi api, String refrigerant, String units) throws ApiException {
        return api.calculateDesignCycle(APICalculateDesignCycleRequest.newBuilder()
                .designRequest(new DesignRequest()
                        .refrigerant(refrigerant)
                        .evaporating(level(20.0))
                        .condensing(level(105.0))
                        .superheat(new TemperatureDifference()
                                .value(10.0)
                                .unit(TemperatureDifference.UnitEnum.DELTA_DEG_F))
                        .subcooling(new TemperatureDifference().value(0.0).unit(TemperatureDifference.UnitEnum.K))
                        .isentropicEfficiency(0.7)
                        .units(units))
                .build());
    }

    private static SaturationLevel level(double temperature) {
        return new SaturationLevel()
                .temperature(new Temperature().value(temperature).unit(Temperature.UnitEnum.DEG_F));
    }
}
