import { useMemo } from 'preact/hooks';
import { bareName } from '../../core/mounts';
import { factsOf, whyNot } from '../../core/partWords';
import type { Scene } from '../../core/scene';
import { thingName, type Thing } from '../../core/things';
import type { RigProps } from '../api';

interface ToldProps extends RigProps {
    scene: Scene;
    thing: Thing | undefined;
    dragged: string | undefined;
}

/** What is known of the thing that is chosen; while it is dragged, what the answer says. */
export function ThingTold({ scene, thing, dragged, ...props }: ToldProps) {
    const { drawing, about, fields, parts, moved, told } = props;
    const part = thing?.part;
    const facts = useMemo(
        () =>
            part === undefined || thing === undefined || dragged !== undefined
                ? []
                : factsOf(thing.id, [drawing, ...(about ?? [])], fields),
        [thing, part, dragged, drawing, about, fields],
    );
    const name = thing && thingName(thing);
    const fixed = thing && parts.length > 0 && part ? whyNot(parts, thing.id) : undefined;
    const struck = scene.strikes.filter(
        strike => strike.struck === name || strike.fan === thing?.id,
    );
    return (
        <div class="telling">
            <div aria-live="polite" class="picture-told">
                {dragged !== undefined ? (
                    <>
                        <p>{[bareName(dragged), moved?.sentence].filter(Boolean).join(': ')}</p>
                        {told?.map((line, k) => (
                            <p key={k}>{line}</p>
                        ))}
                    </>
                ) : (
                    thing && (
                        <p class="part-words">
                            {name}, {thing.what}
                        </p>
                    )
                )}
            </div>
            {thing && dragged === undefined && (
                <>
                    {fixed && <p class="picture-key">{fixed}</p>}
                    {struck.length > 0 && (
                        <ul class="strikes">
                            {struck.map(({ fan, struck, distance, share }) => (
                                <li key={`${fan} ${struck}`}>
                                    the jet of {fan} strikes {struck}:{' '}
                                    <span data-si={String(distance?.si)}>{distance?.shown}</span>{' '}
                                    from the fan, with{' '}
                                    <span data-si={String(share?.si)}>{share?.shown}</span> of its
                                    thrust
                                </li>
                            ))}
                        </ul>
                    )}
                    <dl class="facts">
                        {facts.map(fact => (
                            <div key={fact.label}>
                                <dt>{fact.label}</dt>
                                <dd>{fact.words}</dd>
                            </div>
                        ))}
                    </dl>
                </>
            )}
        </div>
    );
}
