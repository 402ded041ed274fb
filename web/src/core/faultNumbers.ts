import { axisOf, numeral, shownOn, type Axis } from './axis';
import { cellOf, labelOf, part, text, type Cell, type Fields, type Numbers } from './cells';
import { standingOf } from './faults';
import type { Cases, Elevation, Matrix } from './wire';

// What pictures of failures and of restraint say, as tables.

export function ofMatrix(matrix: Matrix, fields: Fields): Numbers {
    const label = (field: string): string => labelOf(fields, field);
    return {
        id: matrix.id,
        title: matrix.title,
        heads: [
            { label: label('fails'), siUnit: '' },
            { label: label('fails-how'), siUnit: '' },
            { label: label('standing'), siUnit: '' },
            ...matrix.columns.map((field, k) => ({
                label: label(field),
                siUnit:
                    matrix.lines.find(line => line.cells[k]?.value.unit !== undefined)?.cells[k]
                        ?.value.unit ?? '',
            })),
            { label: label('alike'), siUnit: '' },
        ],
        rows: matrix.lines.map(line => [
            part(line.part),
            text(line.what),
            text(standingOf(line, label)),
            ...line.cells.map(cell => cellOf(cell.value)),
            text(line.members.join(', ') || '–'),
        ]),
    };
}

function axisOfCases(cases: Cases, fields: Fields): Axis {
    const { field } = cases.y;
    return axisOf(
        fields[field],
        field,
        cases.cases.flatMap(one => one.values),
    );
}

/** A row a case: what comes of it, what is lost, and which of what is left has most. */
export function ofCases(cases: Cases, fields: Fields): Numbers {
    const axis = axisOfCases(cases, fields);
    const label = labelOf(fields, cases.y.field);
    return {
        id: cases.id,
        title: cases.title,
        heads: [
            { label: 'case', siUnit: '' },
            { label: 'outcome', siUnit: '' },
            { label: 'lost', siUnit: '' },
            { label: `most ${label}${axis.unit ? ` [${axis.unit}]` : ''}`, siUnit: cases.y.unit },
            { label: 'at', siUnit: '' },
        ],
        rows: cases.cases.map(one => {
            const lost = cases.spots.filter((_, k) => one.lost[k]).map(spot => spot.part);
            const left = one.values.map((si, k) => (one.lost[k] ? -Infinity : si));
            const most = Math.max(...left);
            const there = Number.isFinite(most);
            return [
                text(one.label),
                text(one.outcome),
                text(lost.join(', ') || '–'),
                there ? onAxis(axis, most) : text('–'),
                text(there ? (cases.spots[left.indexOf(most)]?.part ?? '–') : '–'),
            ];
        }),
    };
}

/** Every part in every case, for a file: a row a case, a column a part. */
export function spotsOf(cases: Cases): Numbers {
    return {
        id: cases.id,
        title: cases.title,
        heads: [
            { label: 'case', siUnit: '' },
            { label: 'outcome', siUnit: '' },
            ...cases.spots.map(spot => ({
                label: `${spot.part} ${spot.kind}`,
                siUnit: cases.y.unit,
            })),
        ],
        rows: cases.cases.map(one => [
            text(one.label),
            text(one.outcome),
            ...one.values.map((si, k) =>
                one.lost[k] ? text('lost') : { words: String(si), si, number: true },
            ),
        ]),
    };
}

/** What pulls where, and how far each thing that is drawn reaches. */
export function ofElevation(elevation: Elevation, fields: Fields): Numbers[] {
    const { loads, shapes, x, y } = elevation;
    const spots = shapes.flatMap(shape => shape.outline);
    const axis = (field: string, k: 0 | 1): Axis =>
        axisOf(
            fields[field],
            field,
            [...spots, ...loads.map(load => load.at)].map(p => p[k]),
        );
    const [across, up] = [axis(x.field, 0), axis(y.field, 1)];
    const force = axisOf(
        fields['load-across'],
        'load-across',
        loads.flatMap(load => [load.across, load.up]),
    );
    const head = (label: string, of: Axis, siUnit: string) => ({
        label: `${label}${of.unit ? ` [${of.unit}]` : ''}`,
        siUnit,
    });
    return [
        {
            id: elevation.id,
            title: `${elevation.title}: loads`,
            heads: [
                { label: 'what', siUnit: '' },
                { label: 'load', siUnit: loads[0]?.value.unit ?? '' },
                head('load across', force, 'N'),
                head('load up', force, 'N'),
                head('across', across, x.unit),
                head('height', up, y.unit),
            ],
            rows: loads.map(load => [
                text(load.label),
                cellOf(load.value),
                onAxis(force, load.across),
                onAxis(force, load.up),
                onAxis(across, load.at[0]),
                onAxis(up, load.at[1]),
            ]),
        },
        {
            id: `${elevation.id}-places`,
            title: `${elevation.title}: places`,
            heads: [
                { label: 'what', siUnit: '' },
                { label: 'is', siUnit: '' },
                head('from', across, x.unit),
                head('to', across, x.unit),
                head('lowest', up, y.unit),
                head('highest', up, y.unit),
            ],
            rows: shapes.map(({ label, shape, outline }) => {
                const [xs, ys] = [outline.map(p => p[0]), outline.map(p => p[1])];
                return [
                    text(label || shape),
                    text(shape),
                    onAxis(across, Math.min(...xs)),
                    onAxis(across, Math.max(...xs)),
                    onAxis(up, Math.min(...ys)),
                    onAxis(up, Math.max(...ys)),
                ];
            }),
        },
    ];
}

function onAxis(axis: Axis, si: number): Cell {
    return { words: numeral(shownOn(axis, si), axis.step / 100), si, number: true };
}
