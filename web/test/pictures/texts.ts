import type { AnswerDocument, Section, Value } from '../../src/core/wire';

/** An answer as `review --json` writes it, before the page's server adds texts. */
interface Bare {
    answer: { question: string; sections: unknown[] };
}

/** Texts of our own, for tests: what the server says is its matter. */
function worded(value: Value): Value {
    const number = (si: number): string => si.toPrecision(4).replace('-', '−');
    const unit = value.unit && value.unit !== '1' ? ` ${value.unit}` : '';
    return {
        ...value,
        shown: value.kind === 'amount' ? number(value.si ?? 0) + unit : (value.text ?? value.kind),
        shownBand: value.band
            ? `${number(value.band.low)} to ${number(value.band.high)}${unit}`
            : '',
    };
}

function isValue(thing: object): thing is Value {
    return 'field' in thing && 'kind' in thing;
}

function walk(thing: unknown, seen: (value: Value) => void): unknown {
    if (Array.isArray(thing)) {
        return thing.map(each => walk(each, seen));
    }
    if (typeof thing !== 'object' || thing === null) {
        return thing;
    }
    if (isValue(thing)) {
        seen(thing);
        return worded(thing);
    }
    return Object.fromEntries(Object.entries(thing).map(([key, each]) => [key, walk(each, seen)]));
}

/** The sections of an answer with texts, and fields that shift and stretch, so that a mix-up shows. */
export function withTexts(bare: Bare): { sections: Section[]; fields: AnswerDocument['fields'] } {
    const fields: AnswerDocument['fields'] = {};
    const note = (name: string, unit: string): void => {
        const length = unit === 'm';
        const percent = /charge-left|throttle|share/.test(name);
        fields[name] = {
            label: name.replaceAll('-', ' '),
            unit: length ? 'mm' : percent ? '%' : unit === '1' ? '' : unit,
            per: length ? 1000 : percent ? 100 : 1,
            plus: 0,
        };
    };
    const sections = walk(bare.answer.sections, value => {
        note(value.field, value.unit ?? '');
    }) as Section[];
    for (const section of sections) {
        if (section.kind === 'plot') {
            note(section.x.field, section.x.unit);
            note(section.y.field, section.y.unit);
        }
    }
    return { sections, fields };
}
