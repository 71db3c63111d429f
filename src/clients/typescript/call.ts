// What the generated client gets from a service: an answer in SI and in IP, one by a query, and what a refusal says.
import { Configuration, CyclePointsApi, PropertiesApi, ProblemFromJSON, ResponseError, type DesignRequest } from './index.js';

declare const process: { argv: string[] };

const configuration = new Configuration({ basePath: process.argv[2] });
const cyclePoints = new CyclePointsApi(configuration);
const properties = new PropertiesApi(configuration);

const trainer: DesignRequest = {
    refrigerant: 'R-134a',
    evaporating: { temperature: { value: 20, unit: 'degF' } },
    condensing: { temperature: { value: 105, unit: 'degF' } },
    superheat: { value: 10, unit: 'delta_degF' },
    subcooling: { value: 0, unit: 'K' },
    isentropicEfficiency: 0.7,
};

for (const units of ['SI', 'IP']) {
    const reply = await cyclePoints.calculateDesignCycle({ designRequest: { ...trainer, units } });
    const effect = reply.performance.refrigeratingEffect;
    console.log(units, effect.value, effect.unit);
}

const chart = await properties.getSaturation({ refrigerant: 'R-290', temperature: '-20 degF', units: 'IP,pressure=psig' });
console.log('chart', chart.dew.pressure.value, chart.dew.pressure.unit);

try {
    await cyclePoints.calculateDesignCycle({ designRequest: { ...trainer, refrigerant: 'R-134' } });
} catch (error) {
    if (!(error instanceof ResponseError)) {
        throw error;
    }
    const problem = ProblemFromJSON(await error.response.json());
    console.log('refused', problem.status, problem.errors?.[0].pointer);
}
