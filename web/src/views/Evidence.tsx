import type { AnswerDocument } from '../core/wire';
import { useBay } from './context';
import { FieldList } from './FieldDialog';
import { Fold } from './Fold';

interface Law {
    name: string;
    source: string;
    validity: string;
    within: boolean;
}
interface Assumption {
    path: string;
    value: string;
    origin: string;
}
interface Check {
    name: string;
    passed: boolean;
}

/** What the answer rests on. */
interface EvidenceProps {
    evidence: Record<string, unknown>;
    fields: AnswerDocument['fields'];
    /** What rests on it, where the evidence of the question stands on the page too. */
    of?: string;
}

export function Evidence({ evidence, fields, of }: EvidenceProps) {
    const id = of === undefined ? 'evidence' : `evidence-${of.replaceAll(' ', '-')}`;
    const bay = useBay();
    const laws = listOf<Law>(evidence['laws'], 'name');
    const assumptions = listOf<Assumption>(evidence['assumptions'], 'path');
    const state = evidence['shown'] ?? evidence['text'];
    const checks = listOf<Check>(evidence['checks'], 'name');
    return (
        <section class="evidence" aria-labelledby={id}>
            <h3 id={id}>What it rests on{of === undefined ? '' : `: ${of}`}</h3>
            {typeof state === 'string' && <p class="quiet">{state}</p>}
            {assumptions.length > 0 && (
                <Fold title={`Not declared, so assumed: ${assumptions.length}`}>
                    {() => (
                        <ul>
                            {assumptions.map(({ path, value, origin }) => (
                                <li key={path}>
                                    <button
                                        type="button"
                                        class="link"
                                        onClick={() => {
                                            bay.show(undefined, path);
                                        }}
                                    >
                                        {path}
                                    </button>{' '}
                                    {value} <span class="quiet">({origin})</span>
                                </li>
                            ))}
                        </ul>
                    )}
                </Fold>
            )}
            {laws.length > 0 && (
                <Fold title={`Laws: ${laws.length}`}>
                    {() => (
                        <ul>
                            {laws.map(({ name, source, validity, within }) => (
                                <li key={name}>
                                    {name}{' '}
                                    <span class="quiet">
                                        ({source}; {validity})
                                    </span>
                                    {!within && <strong> outside of its range here</strong>}
                                </li>
                            ))}
                        </ul>
                    )}
                </Fold>
            )}
            {checks.length > 0 && (
                <Fold title={`Checks of this very run: ${checks.length}`}>
                    {() => (
                        <ul>
                            {checks.map(({ name, passed }) => (
                                <li key={name}>
                                    {name}: {passed ? 'passed' : <strong>did not pass</strong>}
                                </li>
                            ))}
                        </ul>
                    )}
                </Fold>
            )}
            <Fold title={`Formula, source and test of every number: ${Object.keys(fields).length}`}>
                {() => <Formulas fields={fields} />}
            </Fold>
        </section>
    );
}

function Formulas({ fields }: { fields: AnswerDocument['fields'] }) {
    return (
        <ul class="formulas">
            {Object.entries(fields).map(([id, words]) => (
                <li key={id}>
                    <strong>{words.label}</strong>
                    <FieldList field={id} words={words} />
                </li>
            ))}
        </ul>
    );
}

function listOf<T>(value: unknown, key: keyof T & string): T[] {
    if (!Array.isArray(value)) return [];
    const all: unknown[] = value;
    return all.filter(
        (each): each is T => typeof each === 'object' && each !== null && key in each,
    );
}
