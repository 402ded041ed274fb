import type {
    AnswerDocument,
    Cases,
    Drawing,
    Elevation,
    Matrix,
    MatrixLine,
    Plot,
    Standing,
    Value,
} from '../../src/core/wire';

// Answers about failures and restraint of our own making, for tests: the numbers mean nothing.

export const FIELDS: AnswerDocument['fields'] = {
    fails: { label: 'fails', unit: '', per: 1, plus: 0 },
    'fails-how': { label: 'how', unit: '', per: 1, plus: 0 },
    standing: { label: 'stands', unit: '', per: 1, plus: 0 },
    alike: { label: 'alike', unit: '', per: 1, plus: 0 },
    outcome: { label: 'outcome', unit: '', per: 1, plus: 0 },
    'lift-after': { label: 'lift over weight after it', unit: '', per: 1, plus: 0 },
    'roll-left': { label: 'roll reserve', unit: '°/s²', per: 180 / Math.PI, plus: 0 },
    'impact-speed': { label: 'impact speed', unit: 'm/s', per: 1, plus: 0 },
    share: { label: 'share of full thrust', unit: '%', per: 100, plus: 0 },
    'load-across': { label: 'load across', unit: 'N', per: 1, plus: 0 },
    'load-up': { label: 'load up', unit: 'N', per: 1, plus: 0 },
    lift: { label: 'lift', unit: 'N', per: 1, plus: 0 },
    across: { label: 'across', unit: 'm', per: 1, plus: 0 },
    'height-above-ground': { label: 'height', unit: 'm', per: 1, plus: 0 },
    time: { label: 'time', unit: 's', per: 1, plus: 0 },
    'card-minutes': { label: 'minutes', unit: '', per: 1, plus: 0 },
};

export function amount(field: string, si: number, half = 0): Value {
    const { unit, per, plus } = FIELDS[field] ?? { unit: '', per: 1, plus: 0 };
    const text = (value: number): string => (value * per + plus).toPrecision(3);
    return {
        field,
        kind: 'amount',
        si,
        unit: { '°/s²': 'rad/s2', '%': '1', '': '1' }[unit] ?? unit,
        shown: `${text(si)} ${unit}`.trim(),
        shownBand: half > 0 ? `${text(si - half)} to ${text(si + half)} ${unit}`.trim() : '',
        ...(half > 0 && {
            band: { low: si - half, high: si + half, coverage: 0.95, method: 'sampled', draws: 9 },
        }),
    };
}

function words(field: string, text: string): Value {
    return { field, kind: 'words', text, shown: text, shownBand: '' };
}

function not(field: string, reason: string): Value {
    return {
        field,
        kind: 'not computed',
        reason,
        shown: `not computed: ${reason}`,
        shownBand: '',
    };
}

function line(
    part: string,
    what: string,
    members: string[],
    ...cells: [Value, Standing][]
): MatrixLine {
    return { part, what, members, cells: cells.map(([value, standing]) => ({ value, standing })) };
}

export const matrix: Matrix = {
    kind: 'matrix',
    id: 'failures',
    title: 'What each failure leaves',
    columns: ['outcome', 'lift-after', 'roll-left', 'impact-speed'],
    lines: [
        line(
            'left.1',
            'fan stops',
            ['fuse of left.1', 'controller of left.1'],
            [words('outcome', 'turns over'), 'short'],
            [amount('lift-after', 1.02, 0.04), 'short'],
            [amount('roll-left', -0.4), 'short'],
            [not('impact-speed', 'it turns over first'), 'cannot be told'],
        ),
        line(
            'back.1',
            'pack lost',
            [],
            [words('outcome', 'sinks'), 'holds'],
            [amount('lift-after', 0.91, 0.05), 'short'],
            [amount('roll-left', 2.1), 'holds'],
            [amount('impact-speed', 2.3), 'holds'],
        ),
        line(
            'right.1',
            'fan stops',
            [],
            [words('outcome', 'flies on'), 'holds'],
            [amount('lift-after', 1.21), 'holds'],
            [amount('roll-left', 3.4), 'holds'],
            [amount('impact-speed', 0), 'told'],
        ),
    ],
};

/** The fans and packs of a drawn rig, each fan lost in turn. */
export function casesOf(rig: Drawing): Cases {
    const spots: Cases['spots'] = rig.layers.flatMap(layer =>
        layer.id !== 'drawn-fans' && layer.id !== 'drawn-parts'
            ? []
            : layer.rows.map(row => {
                  const si = (field: string): number => row[layer.columns.indexOf(field)]?.si ?? 0;
                  return {
                      part: row[layer.columns.indexOf('part')]?.text ?? '',
                      kind: layer.id === 'drawn-fans' ? 'fan' : 'pack',
                      at: [si('place-forward'), si('place-right'), si('place-up')] as [
                          number,
                          number,
                          number,
                      ],
                  };
              }),
    );
    return {
        kind: 'cases',
        id: 'failure-cases',
        title: 'Each failure on the rig',
        y: { field: 'share', unit: '1' },
        spots,
        cases: spots.map((lost, at) => ({
            label: `${lost.part}, ${lost.kind === 'fan' ? 'fan stops' : 'pack lost'}`,
            outcome: at === 0 ? 'turns over' : 'flies on',
            lost: spots.map((_, k) => k === at),
            values: spots.map((_, k) => (k === at ? 0 : 0.5 + 0.01 * k)),
        })),
    };
}

export const elevation: Elevation = {
    kind: 'elevation',
    id: 'restraint-elevation',
    title: 'The stand from the side',
    x: { field: 'across', unit: 'm' },
    y: { field: 'height-above-ground', unit: 'm' },
    shapes: [
        {
            shape: 'keep out',
            label: 'nobody within 4 m',
            outline: [
                [-4, 0],
                [4, 0],
            ],
            closed: false,
        },
        {
            shape: 'stand',
            label: 'stand',
            outline: [
                [-0.5, 0],
                [0.5, 0],
                [0.5, 2],
                [-0.5, 2],
            ],
            closed: true,
        },
        {
            shape: 'down line',
            label: 'line to the ground',
            outline: [
                [0.5, 2],
                [1.5, 0],
            ],
            closed: false,
        },
        { shape: 'anchor', label: '', outline: [[1.5, 0]], closed: false },
    ],
    loads: [
        {
            label: 'lift, all at full',
            at: [0, 2],
            across: 0,
            up: 900,
            value: amount('lift', 900, 20),
        },
        { label: 'push', at: [0, 2], across: 225, up: 0, value: amount('lift', 225) },
    ],
};

export const heights: Plot = {
    kind: 'plot',
    id: 'heights',
    title: 'Heights with no way out',
    x: { field: 'height-above-ground', unit: 'm' },
    y: { field: 'time', unit: 's' },
    series: [
        {
            label: 'time until the ground',
            mark: 'line',
            points: [
                [0, 0],
                [5, 1],
                [10, 1.4],
            ],
        },
    ],
    zones: [{ label: 'nothing helps', from: 2, to: 6 }],
};
