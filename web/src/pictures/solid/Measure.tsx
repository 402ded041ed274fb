import { wayWords } from '../../core/lengths';
import { length, minus } from '../../core/space';
import { measured, thingName, type Thing } from '../../core/things';
import type { AnswerDocument } from '../../core/wire';

interface MeasureProps {
    things: readonly Thing[];
    from: string | undefined;
    to: string | undefined;
    fields: AnswerDocument['fields'];
    onFrom: (id: string | undefined) => void;
    onTo: (id: string | undefined) => void;
}

/** How far two things are apart: chosen by name, or one after the other in the picture. */
export function Measure({ things, from, to, fields, onFrom, onTo }: MeasureProps) {
    const one = things.find(thing => thing.id === from);
    const other = things.find(thing => thing.id === to);
    const found = one && other && measured(one, other);
    const choose = (
        words: string,
        value: string | undefined,
        onChoose: (id: string | undefined) => void,
    ) => (
        <label>
            {words}
            <select
                value={value ?? ''}
                onChange={event => {
                    onChoose(event.currentTarget.value || undefined);
                }}
            >
                <option value="">nothing</option>
                {things.map(thing => (
                    <option key={thing.id} value={thing.id}>
                        {thingName(thing)}, {thing.what}
                    </option>
                ))}
            </select>
        </label>
    );
    return (
        <div class="rig-tools measure" role="group" aria-label="Measure">
            {choose('from', from, onFrom)}
            {choose('to', to, onTo)}
            <output
                aria-live="polite"
                data-m={found ? String(length(minus(found.to, found.from))) : undefined}
            >
                {found ? wayWords(found.from, found.to, fields) : ''}
            </output>
        </div>
    );
}
