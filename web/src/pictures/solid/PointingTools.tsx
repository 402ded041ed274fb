import { thingName } from '../../core/things';
import { Measure } from './Measure';
import type { Pointing } from './usePointing';

/** The thing by its name, for who cannot point at it, and whether distances are told. */
export function PointingTools({ pointing }: { pointing: Pointing }) {
    const { things, thing, measuring } = pointing;
    return (
        <>
            <label>
                thing
                <select
                    value={thing?.id ?? ''}
                    onChange={event => {
                        const { value } = event.currentTarget;
                        const found = things.find(each => each.id === value);
                        if (found) pointing.choose(found);
                    }}
                >
                    <option value="">none</option>
                    {things.map(each => (
                        <option key={each.id} value={each.id}>
                            {thingName(each)}, {each.what}
                        </option>
                    ))}
                </select>
            </label>
            <label>
                <input
                    type="checkbox"
                    checked={measuring}
                    onChange={event => {
                        pointing.measure(event.currentTarget.checked);
                    }}
                />
                measure
            </label>
        </>
    );
}

/** How far two things are apart, while one measures. */
export function MeasuredWay({ pointing }: { pointing: Pointing }) {
    const { things, ends, fields, measuring, setEnds } = pointing;
    if (!measuring) return null;
    return (
        <Measure
            things={things}
            from={ends[0]}
            to={ends[1]}
            fields={fields}
            onFrom={id => {
                setEnds(id, ends[1]);
            }}
            onTo={id => {
                setEnds(ends[0], id);
            }}
        />
    );
}
