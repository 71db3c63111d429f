// What the generated client gets from a service: an answer in SI and in IP, one by a query, and what a refusal says.
using System.Globalization;
using Loopstate.Api;
using Loopstate.Extensions;
using Loopstate.Model;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
using var host = Host.CreateDefaultBuilder()
    .ConfigureLogging(logging => logging.ClearProviders())
    .ConfigureApi((_, options) => options.AddApiHttpClients(
        (HttpClient client) => client.BaseAddress = new Uri(args[0])))
    .Build();
var cyclePoints = host.Services.GetRequiredService<ICyclePointsApi>();
var properties = host.Services.GetRequiredService<IPropertiesApi>();

foreach (var units in new[] { "SI", "IP" })
{
    var reply = await cyclePoints.CalculateDesignCycleAsync(Trainer("R-134a", units));
    var effect = reply.Ok()!.Performance.RefrigeratingEffect;
    Console.WriteLine($"{units} {effect.Value} {SpecificEnergy.UnitEnumToJsonValue(effect.Unit)}");
}

var saturation = await properties.GetSaturationAsync("R-290", temperature: "-20 degF", units: "IP,pressure=psig");
var chart = saturation.Ok()!.Dew.Pressure;
Console.WriteLine($"chart {chart.Value} {Pressure.UnitEnumToJsonValue(chart.Unit)}");

var refusal = await cyclePoints.CalculateDesignCycleAsync(Trainer("R-134", "SI"));
var problem = refusal.BadRequest()!;
Console.WriteLine($"refused {problem.Status} {problem.Errors![0].Pointer}");

static DesignRequest Trainer(string refrigerant, string units) => new(
    refrigerant: refrigerant,
    evaporating: new SaturationLevel(temperature: new Temperature(20, Temperature.UnitEnum.DegF)),
    condensing: new SaturationLevel(temperature: new Temperature(105, Temperature.UnitEnum.DegF)),
    isentropicEfficiency: 0.7,
    superheat: new TemperatureDifference(10, TemperatureDifference.UnitEnum.DeltaDegF),
    subcooling: new TemperatureDifference(0, TemperatureDifference.UnitEnum.K),
    units: units);
