import { useCallback, useId, useMemo, useRef, useState } from 'preact/hooks';
import { axisOf } from '../core/axis';
import { spotsOf } from '../core/faultNumbers';
import { caseMarks, survivors, type CaseMark } from '../core/faults';
import { withLengths } from '../core/lengths';
import { labelOf, numbersOf } from '../core/numbers';
import { textOn } from '../core/playback';
import { NO_SCENE, sceneOf, type Scene } from '../core/scene';
import { lay, VIEWS, type ViewName } from '../core/view';
import type { Cases } from '../core/wire';
import type { PictureProps } from './api';
import { CaseRig, caseCorners, caseScene } from './CaseRig';
import { Frame } from './Frame';
import { InSpace } from './InSpace';
import { RigEdges } from './RigEdges';
import { SeenFrom } from './SeenFrom';
import { useWidth } from './useWidth';

const SHEET = { margin: 34, foot: 24, leastHeight: 200, mostHeight: 460 };
const INSET = 18; // padding and frame of a picture
const WIDEST = 680;
const LISTED = 6;
const SIDES: readonly ViewName[] = ['above', 'behind', 'side'];

/** A failure on the drawn rig: what is lost is crossed, what is left tells its share. */
export function CasesPicture(props: PictureProps & { section: Cases }) {
    const { section, fields, fileName, stale, selected, onShow, rig, chosen, onChoose } = props;
    const [own, setOwn] = useState<string>();
    const wanted = chosen ?? own;
    const at = Math.max(
        0,
        section.cases.findIndex(one => one.label === wanted),
    );
    const drawn = section.cases[at];
    const lengths = useMemo(() => withLengths(fields, props.units), [fields, props.units]);
    const tables = useCallback(() => numbersOf(section, fields), [section, fields]);
    const file = useCallback(() => [spotsOf(section)], [section]);
    const marks = useMemo(() => caseMarks(section, at), [section, at]);
    const scene = useMemo(() => caseScene(rig ? sceneOf(rig) : NO_SCENE, marks), [rig, marks]);
    const axis = useMemo(
        () =>
            axisOf(
                fields[section.y.field],
                section.y.field,
                section.cases.flatMap(one => one.values),
            ),
        [section, fields],
    );
    const tell = useCallback((si: number): string => textOn(axis, si), [axis]);
    const label = labelOf(fields, section.y.field);
    const choose = (to: number): void => {
        const one = section.cases[to];
        if (one) {
            setOwn(one.label);
            onChoose?.(one.label);
        }
    };
    const missing = wanted !== undefined && drawn !== undefined && drawn.label !== wanted;
    return (
        <Frame
            title={section.title}
            fileName={fileName}
            kind="cases"
            tables={tables}
            file={file}
            stale={stale}
            selected={selected}
            onShow={onShow}
        >
            {drawn && (
                <>
                    <Stepper cases={section} at={at} onChoose={choose} />
                    <p class="case-outcome" aria-live="polite">
                        <strong>{drawn.label}</strong>: {drawn.outcome}
                        {missing && ` (${wanted} is not drawn)`}
                    </p>
                    <Drawn
                        title={section.title}
                        words={`${drawn.label}: ${drawn.outcome}`}
                        marks={marks}
                        scene={scene}
                        fields={fields}
                        tell={tell}
                        selected={selected}
                        onShow={onShow}
                    />
                    <InSpace
                        title={section.title}
                        load={() => import('./solid/CaseSpace')}
                        props={{
                            words: `${drawn.label} in 3D: ${drawn.outcome}`,
                            title: section.title,
                            marks,
                            scene,
                            tell,
                            fields: lengths,
                            selected,
                            onShow,
                        }}
                    />
                    <Left marks={marks} label={label} tell={tell} onShow={onShow} />
                </>
            )}
            <p class="picture-key">
                Crossed, with a broken rim: lost. The inner disk grows with the {label} of a fan
                that is left; the greatest stand beside theirs, all in the table.
            </p>
        </Frame>
    );
}

interface StepperProps {
    cases: Cases;
    at: number;
    onChoose: (at: number) => void;
}

function Stepper({ cases, at, onChoose }: StepperProps) {
    const last = cases.cases.length - 1;
    return (
        <div class="player" role="group" aria-label={`${cases.title}: cases`}>
            <button
                type="button"
                disabled={at <= 0}
                onClick={() => {
                    onChoose(at - 1);
                }}
            >
                before
            </button>
            <select
                aria-label={`case of ${cases.title}`}
                value={String(at)}
                onChange={event => {
                    onChoose(Number(event.currentTarget.value));
                }}
            >
                {cases.cases.map((one, k) => (
                    <option key={k} value={String(k)}>
                        {one.label}
                    </option>
                ))}
            </select>
            <button
                type="button"
                disabled={at >= last}
                onClick={() => {
                    onChoose(at + 1);
                }}
            >
                next
            </button>
        </div>
    );
}

interface DrawnProps {
    title: string;
    words: string;
    marks: readonly CaseMark[];
    scene: Scene;
    fields: PictureProps['fields'];
    tell: (si: number) => string;
    selected: string | undefined;
    onShow: (part: string) => void;
}

function Drawn({ title, words, marks, scene, fields, tell, selected, onShow }: DrawnProps) {
    const id = useId();
    const [side, setSide] = useState<ViewName>('above');
    const room = useRef<HTMLDivElement>(null);
    const width = Math.min(WIDEST, Math.max(150, Math.floor(useWidth(room) - INSET)));
    const laid = useMemo(
        () => lay([VIEWS[side]], caseCorners(scene, marks), { ...SHEET, width })[0],
        [side, scene, marks, width],
    );
    const seen = `${title}, ${words}, seen ${VIEWS[side].words}`;
    return (
        <>
            <SeenFrom sides={SIDES} side={side} onSide={setSide} />
            <div ref={room}>
                {laid && (
                    <svg
                        class="drawn view"
                        viewBox={`0 0 ${laid.width} ${laid.height}`}
                        role="img"
                        aria-label={seen}
                        data-title={seen}
                    >
                        <CaseRig
                            id={id}
                            marks={marks}
                            scene={scene}
                            laid={laid}
                            tell={tell}
                            selected={selected}
                            onShow={onShow}
                        />
                        <RigEdges laid={laid} fields={fields} />
                    </svg>
                )}
            </div>
        </>
    );
}

interface LeftProps {
    marks: readonly CaseMark[];
    label: string;
    tell: (si: number) => string;
    onShow: (part: string) => void;
}

/** What is lost, and what is left with the greatest share, in numbers. */
function Left({ marks, label, tell, onShow }: LeftProps) {
    const lost = marks.filter(mark => mark.lost);
    const left = survivors(marks).slice(0, LISTED);
    const name = (mark: CaseMark) => (
        <button
            key={`${mark.part} ${mark.kind}`}
            type="button"
            class="part-name"
            onClick={() => {
                onShow(mark.part);
            }}
        >
            {mark.part}
        </button>
    );
    return (
        <ol class="ahead" aria-label={`what is lost, and ${label} of what is left`}>
            {grouped(lost, mark => mark.kind).map(([kind, marks]) => (
                <li key={`lost ${kind}`}>
                    <span class="reading">{kind} lost:</span>
                    {marks.map(name)}
                </li>
            ))}
            {grouped(left, mark => tell(mark.value)).map(([told, marks]) => (
                <li key={`left ${told}`}>
                    <span class="reading">
                        {label} <span data-si={String(marks[0]?.value)}>{told}</span>:
                    </span>
                    {marks.map(name)}
                </li>
            ))}
        </ol>
    );
}

/** Marks that are told alike, under what is told of them, in the order of the first of each. */
function grouped(
    marks: readonly CaseMark[],
    told: (mark: CaseMark) => string,
): [string, CaseMark[]][] {
    const groups = new Map<string, CaseMark[]>();
    for (const mark of marks) {
        groups.set(told(mark), [...(groups.get(told(mark)) ?? []), mark]);
    }
    return [...groups];
}
