import type { ComponentChildren } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import { thingName } from '../../core/things';
import type { AnswerDocument } from '../../core/wire';
import type { Exhibit, Overlay } from './exhibit';
import { together } from './ghost';
import { NoWebGl } from './NoWebGl';
import { pointedByKey, SPACE_KEYS } from './pointingKeys';
import { MeasuredWay, PointingTools } from './PointingTools';
import { SpaceView, type SpaceHand } from './SpaceView';
import type { Stage } from './Stage';
import { usePointing } from './usePointing';

interface PointedProps {
    /** What is shown, for a listener; its keys are added. */
    words: string;
    /** What it is of, for a listener: "Heat while it hovers". */
    title: string;
    exhibit: Exhibit;
    overlay?: Overlay | undefined;
    fields: AnswerDocument['fields'];
    selected: string | undefined;
    onShow: (part: string) => void;
    onStage?: ((stage: Stage | undefined) => void) | undefined;
    /** More tools beside the thing and the measure. */
    children?: ComponentChildren;
}

/** Something in space of which each thing can be pointed at and measured from, and none moved. */
export function PointedView(props: PointedProps) {
    const { words, title, exhibit, overlay, fields, selected, onShow, onStage, children } = props;
    const { things } = exhibit;
    const pointing = usePointing({ things, selected, fields, onShow });
    const now = useRef(pointing);
    now.current = pointing;
    const hand = useMemo<SpaceHand>(
        () => ({
            take: () => false,
            pull: nothing,
            drop: nothing,
            cancel: nothing,
            key: (_, event) => pointedByKey(now.current, event),
        }),
        [],
    );
    const way = pointing.overlay;
    const all = useMemo(() => together(overlay, way), [overlay, way]);
    const { thing } = pointing;
    return (
        <>
            <div class="rig-tools" role="group" aria-label={`${title}: point and measure`}>
                {children}
                <PointingTools pointing={pointing} />
            </div>
            <MeasuredWay pointing={pointing} />
            <SpaceView
                words={`${words}. ${SPACE_KEYS}.`}
                exhibit={exhibit}
                overlay={all}
                selected={pointing.current}
                hand={hand}
                onPick={pointing.choose}
                onStage={onStage}
                instead={<NoWebGl />}
            />
            <p class="part-words" role="status">
                {thing && `${thingName(thing)}, ${thing.what}`}
            </p>
        </>
    );
}

function nothing(): void {
    // none of this can be moved
}
