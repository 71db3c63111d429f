"""What the generated client gets from a service: an answer in SI and in IP, one by a query, and what a refusal says."""

import sys

from client import (
    ApiClient,
    ApiException,
    Configuration,
    CyclePointsApi,
    DesignRequest,
    PropertiesApi,
    SaturationLevel,
    Temperature,
    TemperatureDifference,
)

api = ApiClient(Configuration(host=sys.argv[1]))
cycle_points = CyclePointsApi(api)
properties = PropertiesApi(api)


def trainer(refrigerant, units):
    return DesignRequest(
        refrigerant=refrigerant,
        evaporating=SaturationLevel(temperature=Temperature(value=20, unit="degF")),
        condensing=SaturationLevel(temperature=Temperature(value=105, unit="degF")),
        superheat=TemperatureDifference(value=10, unit="delta_degF"),
        subcooling=TemperatureDifference(value=0, unit="K"),
        isentropicEfficiency=0.7,
        units=units,
    )


for units in ("SI", "IP"):
    effect = cycle_points.calculate_design_cycle(trainer("R-134a", units)).performance.refrigerating_effect
    print(units, effect.value, effect.unit)

dew = properties.get_saturation("R-290", temperature="-20 degF", units="IP,pressure=psig").dew
print("chart", dew.pressure.value, dew.pressure.unit)

try:
    cycle_points.calculate_design_cycle(trainer("R-134", "SI"))
except ApiException as refused:
    print("refused", refused.status, refused.data.errors[0].pointer)
