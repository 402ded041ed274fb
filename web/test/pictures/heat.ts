import type {
    AnswerDocument,
    Drawing,
    Playback,
    Section,
    Shares,
    Timeline,
    Track,
    Value,
} from '../../src/core/wire';

// An answer about heat of our own making, for tests: the numbers mean nothing.

const FIELDS: AnswerDocument['fields'] = {
    time: { label: 'time', unit: 's', per: 1, plus: 0 },
    'time-to-limit': { label: 'reached after', unit: 's', per: 1, plus: 0 },
    temperature: { label: 'temperature', unit: '°C', per: 1, plus: -273.15 },
    'electrical-power': { label: 'power', unit: 'W', per: 1, plus: 0 },
    'share-of-whole': { label: 'share', unit: '%', per: 100, plus: 0 },
    'charge-left': { label: 'charge left', unit: '%', per: 100, plus: 0 },
};

export function amount(field: string, si: number, half = 0): Value {
    const { unit, per, plus } = FIELDS[field] ?? { unit: '', per: 1, plus: 0 };
    const text = (value: number): string => (value * per + plus).toFixed(1).replace(/\.0$/, '');
    return {
        field,
        kind: 'amount',
        si,
        unit: { '°C': 'K', '%': '1' }[unit] ?? unit,
        shown: `${text(si)} ${unit}`,
        shownBand: half > 0 ? `${text(si - half)} to ${text(si + half)} ${unit}` : '',
        ...(half > 0 && {
            band: { low: si - half, high: si + half, coverage: 0.95, method: 'sampled', draws: 9 },
        }),
    };
}

export const never: Value = {
    field: 'time-to-limit',
    kind: 'never',
    shown: 'never',
    shownBand: '',
};

export const timeline: Timeline = {
    kind: 'timeline',
    id: 'first-limits',
    title: 'What gives out first in hover, as far as it goes',
    horizon: amount('time', 183),
    bars: [
        {
            part: 'left.feed',
            what: 'wire 12 AWG, worst of 2',
            at: amount('time-to-limit', 61, 14),
            hottest: amount('temperature', 371.4),
            limit: amount('temperature', 323.15),
            where: 'in 240 of 256 draws',
        },
        {
            part: 'back.1',
            what: 'reserve',
            at: amount('time-to-limit', 122.4, 9),
            hottest: amount('charge-left', 0.2),
            limit: amount('charge-left', 0.2),
            where: '',
        },
        {
            part: 'left.1',
            what: 'motor winding, worst of 10',
            at: {
                field: 'time-to-limit',
                kind: 'not computed',
                reason: 'still warming when the flight ends',
                shown: 'not computed: still warming when the flight ends',
                shownBand: '',
            },
            hottest: amount('temperature', 371.1),
            limit: amount('temperature', 393.15),
            where: '',
        },
        {
            part: 'back.1.fuse',
            what: 'opening of the fuse 200 A',
            at: never,
            hottest: amount('share-of-whole', 0.34),
            limit: amount('share-of-whole', 1),
            where: '',
        },
    ],
};

export const shares: Shares = {
    kind: 'shares',
    id: 'losses',
    title: 'Where the watts go, mean of the flight that is asked',
    whole: amount('electrical-power', 20000),
    shares: [
        ['rotors, and so the jets', 15000],
        ['windings', 2600],
        ['switches of the controllers', 1400],
        ['cells', 800],
        ['wires', 200],
    ].map(([label, watt]) => ({
        label: String(label),
        value: amount('electrical-power', Number(watt)),
        share: amount('share-of-whole', Number(watt) / 20000),
    })),
};

const TIMES = Array.from({ length: 61 }, (_, k) => 3 * k);

/** Warms towards an end with a lag; tenths, as whoever makes them rounds them. */
function warming(toK: number, lagS: number): number[] {
    return TIMES.map(
        s => Math.round(10 * (288.1 + (toK - 288.1) * (1 - Math.exp(-s / lagS)))) / 10,
    );
}

export function track(
    part: string,
    kind: string,
    from: Track['from'],
    to: Track['to'],
    limit: number,
    values: number[],
): Track {
    return { part, kind, from, to, limit, values };
}

/** The parts of a drawn rig, as if a bus stood in its middle. */
export function playback(rig?: Drawing): Playback {
    const tracks: Track[] = [];
    const bus: Track['from'] = [-0.12, 0, 0.05];
    const layer = (id: string) => rig?.layers.find(each => each.id === id);
    for (const [id, kind] of [
        ['drawn-fans', 'fan'],
        ['drawn-parts', 'pack'],
    ]) {
        const table = layer(id ?? '');
        table?.rows.forEach((row, k) => {
            const at = (name: string): number => row[table.columns.indexOf(name)]?.si ?? 0;
            const part = row[table.columns.indexOf('part')]?.text ?? '';
            const place: Track['from'] = [at('place-forward'), at('place-right'), at('place-up')];
            if (kind === 'fan') {
                tracks.push(
                    track(part, 'motor winding', place, place, 393.15, warming(376 + 2 * k, 40)),
                    track(
                        part,
                        'switches of the controller',
                        place,
                        place,
                        373.15,
                        warming(340, 8),
                    ),
                    track(`${part}.lead`, 'wire', bus, place, 353.15, warming(330 + 3 * k, 60)),
                );
            } else if (row[table.columns.indexOf('part-kind')]?.text === 'pack') {
                tracks.push(
                    track(part, 'cells', place, place, 333.15, warming(318, 90)),
                    track(`${part}.main`, 'joint', bus, bus, 363.15, warming(352, 20)),
                );
            }
        });
    }
    tracks.push(
        track('left.feed', 'wire', bus, [0, -0.45, -0.1], 323.15, warming(375, 50)),
        track('left.plug', 'joint', [0, -0.45, -0.1], [0, -0.45, -0.1], 363.15, warming(368, 30)),
    );
    return {
        kind: 'playback',
        id: 'heat-playback',
        title: 'Temperatures in what is asked, rest after it included',
        x: { field: 'time', unit: 's' },
        y: { field: 'temperature', unit: 'K' },
        times: TIMES,
        tracks,
    };
}

export function heatDocument(rig?: Drawing): {
    sections: Section[];
    fields: AnswerDocument['fields'];
} {
    const played = playback(rig);
    const hot = [...played.tracks].sort((a, b) => Math.max(...b.values) - Math.max(...a.values));
    return {
        sections: [
            timeline,
            played,
            shares,
            {
                kind: 'plot',
                id: 'temperatures',
                title: 'The parts nearest their limits, as far as the flight goes',
                x: played.x,
                y: played.y,
                series: hot.slice(0, 4).flatMap(({ part, kind, values, limit }) => [
                    {
                        label: `${kind} ${part}`,
                        mark: 'line' as const,
                        points: values.map((v, k): [number, number] => [TIMES[k] ?? 0, v]),
                    },
                    ...values
                        .flatMap((v, k) => (v >= limit ? [k] : []))
                        .slice(0, 1)
                        .map(k => ({
                            label: 'its limit',
                            mark: 'cross' as const,
                            points: [[TIMES[k] ?? 0, limit]] as [number, number][],
                        })),
                ]),
            },
        ],
        fields: FIELDS,
    };
}
