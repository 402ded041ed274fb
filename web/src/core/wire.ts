// What page and server say to each other. Everything under /api is POST with a JSON body and JSON back,
// except the three streams (/api/ask, /api/try, /api/watch), which answer with one JSON object a line.
// Skip empty lines of a stream: the server sends one every two seconds while it has nothing to tell.
// Every request but /api/enter carries the header `Liftwright-Key`. Errors: status 4xx and a Fault.
// Positions in text: `line` and `column` from 1, `from` and `to` offsets in UTF-16 units of `text`.

// ---- session -------------------------------------------------------------------------------------

/** POST /api/enter {token}: the token of the printed link (`#enter=TOKEN`), good once. */
export interface Entered {
    key: string;
}
/** POST /api/link {}: another link with a fresh token, to open a second tab. */
export interface Link {
    url: string;
}
/** POST /api/folder {}: what can be opened. */
export interface Folder {
    name: string;
    version: string;
    /** The rig to open first, where one was named or only one is there. */
    open?: string;
    rigs: { path: string; name: string }[];
}

export interface Fault {
    /** 'key' | 'host' | 'origin' | 'stale' | 'refused' | 'conflict' | 'missing' | 'too large' | 'too many' | 'bad request' | 'internal' */
    fault: string;
    /** A sentence for the reader. */
    sentence: string;
    /** With 'stale', 'refused' and 'conflict': the document as it stands. */
    document?: RigDocument;
}

// ---- the document --------------------------------------------------------------------------------

/** POST /api/document {rig}. Every call that edits gives it back whole. */
export interface RigDocument {
    rig: string;
    /** Digest of text and tables: names this state; an edit says which it was made on (`base`). */
    revision: string;
    text: string;
    /** Whether the file on disk holds exactly this text. */
    saved: boolean;
    /** Whether a rig could be read: no problem is an error. */
    readable: boolean;
    problems: Problem[];
    parts: Part[];
    outline: OutlineNode[];
    /** What undo and redo would take back or do again, in words; absent when nothing. */
    undo?: string;
    redo?: string;
    /** Another program wrote the file and it could not be merged: both texts are kept. */
    conflict?: { diskText: string; sentence: string };
    /** What was recovered or merged on the way here, to be told once. */
    told?: string;
}
export interface Problem {
    code: string;
    severity: 'error' | 'warning' | 'note';
    line: number;
    column: number;
    from: number;
    to: number;
    path: string;
    found: string;
    expected: string;
    suggestion: string;
}
/** Something on the rig that can be shown, dragged or named. */
export interface Part {
    id: string;
    kind: 'fan' | 'pack' | 'mount' | 'part';
    /** Path of what declares it; several generated parts share one. */
    path: string;
    line: number;
    from: number;
    to: number;
    /** Whether /api/move can move it, and if not, why. */
    movable: boolean;
    why?: string;
    /** The id of its twin on the other side, if any. */
    twin?: string;
}
/** The file as a tree: what the facing page shows as outline. */
export interface OutlineNode {
    path: string;
    key: string;
    /** The text of a scalar; absent for maps and lists. */
    value?: string;
    line: number;
    from: number;
    to: number;
    children: OutlineNode[];
}

/** As in the remedies of an answer. */
export type Change =
    | { kind: 'set'; at: string; value: string }
    | { kind: 'add'; at: string; key: string; value: string }
    | { kind: 'remove'; at: string }
    | { kind: 'replace'; at: string; value: string }
    | { kind: 'move'; at: string; index: number };

// POST /api/change {rig, base, changes: Change[], label: string} -> RigDocument.
//   On an older base the changes are made on the text as it stands if every path still leads somewhere
//   (merged, `told`), else 409 'refused'.
// POST /api/text {rig, base, text} -> RigDocument. Any text, broken or not. On an older base 409 'stale'.
// POST /api/undo, /api/redo {rig, base} -> RigDocument. Restores stored bytes.
// POST /api/save {rig, base} -> RigDocument; 409 'conflict' when the disk holds something else.
// POST /api/resolve {rig, base, take: 'mine' | 'disk'} -> RigDocument. 'mine' makes the disk's text the one
//   saved over next; 'disk' takes it and leaves mine one undo away.
// POST /api/complete {text, from} -> Completion.
// POST /api/watch {rig} -> stream of Watched: a line when the document changed elsewhere (disk, tab).
export interface Watched {
    /** Absent in a heartbeat. */
    revision?: string;
    saved?: boolean;
    /** In a line of its own: all jobs of the folder, whenever one stands otherwise. */
    jobs?: Job[];
}
export interface Completion {
    from: number;
    to: number;
    options: { label: string; insert: string; detail: string }[];
}

/**
 * POST /api/move {rig, base, part, to: Place, snap: boolean, twin: boolean, whole?: boolean} -> Moved. Nothing is changed:
 * the changes are to be tried or made. `to` is where its middle shall be, on the drawn rig.
 * `whole` moves all of its group by the same. A mount is named `mounts/NAME` where a part has its name.
 * 409 'refused' with the reason where it cannot stand there. Keys nudge with `snap: false`: a step of 1 mm or more.
 */
export interface Place {
    forwardM: number;
    rightM: number;
    upM: number;
}
export interface Moved {
    changes: Change[];
    /** Where it comes to stand after snapping. */
    place: Place;
    /** "sets fans/2/at", "adds an except entry to the ring left": what the file will say. */
    sentence: string;
    /** Ids of all parts that move with it, its own too; mounts as `mounts/NAME`. */
    moves?: string[];
}

/** POST /api/begin: a rig from nothing -> RigDocument of the new file (saved). 409 'refused' if it exists. */
export interface Beginning {
    /** New file or folder in the opened folder. */
    name: string;
    /** Answers of the guide by key, as text with units: see GuideStep. */
    answers: Record<string, string>;
    /** In which placeholders were given; SI where it is left out. */
    units?: Units;
}
/** POST /api/guide {answers, units?: Units} -> Guide: the steps, with what is wrong in the answers so far. */
export interface Guide {
    steps: GuideStep[];
    /** The file these answers make; absent while a problem stands. */
    text?: string;
}
export interface GuideStep {
    id: string;
    title: string;
    why: string;
    fields: GuideField[];
}
export interface GuideField {
    key: string;
    label: string;
    /** How to find the value, in a sentence. */
    help: string;
    kind: 'text' | 'quantity' | 'count' | 'choice';
    choices?: { value: string; label: string }[];
    /** What stands there until it is answered. */
    value: string;
    problem?: string;
}

// ---- answers -------------------------------------------------------------------------------------

export type Question =
    | 'lift'
    | 'endurance'
    | 'heat'
    | 'balance'
    | 'failures'
    | 'restraint'
    | 'flight'
    | 'trials'
    | 'learning';
export type Units = 'si' | 'us';

// POST /api/ask {rig, base, questions: Question[], units, to: Stage, profile?, anew?: boolean, turn?: number} -> stream
//   of Told, every question nominal first, then banded, then whole, as far as `to`. What is known of that state of the
//   rig is told at once, as far as it is known, and is computed again only where it is asked `anew`. Bands of the first
//   question, which lies open, come before those of the others; bands of heat, failures, restraint and flight come when
//   the others are whole. Closing the stream stops the work, and so does a newer ask of the same tab: the one with the
//   higher `turn`, whichever arrives first.
// POST /api/profiles {rig} -> {profiles: string[]}: names of the files in the folder profiles beside the rig. An ask with
//   `profile`, one of them, flies that one; without it the first, or the usual one where there is none.
// POST /api/try {rig, base, changes: Change[], questions, units, turn?: number} -> the same stream, nominal
//   only, of the rig with these changes in memory; nothing is kept.
// POST /api/compare {rig, base, questions, units, file? | test?, turn?} -> stream of CompareTold: the rig as it stands,
//   the second of two, beside its file as saved, another rig file of the folder or the rig of a logged test. First come
//   nominal answers of both for their pictures: of balance, and of lift and endurance where these are asked.
// POST /api/sensitivities {rig, base, question, units, turn?} -> stream of SensitivityTold: the declared values that
//   move the verdict most, with what the file would say over their bands.
// POST /api/report {rig, base, units} -> the HTML report, as a file.
// POST /api/card {rig, base, card, units, turn?} -> stream of Told of the question 'trials', stage 'whole' alone: the
//   card with what is predicted for it, and the cheapest set of cards that proves it again. Stopped as an ask is.
// POST /api/sheet {rig, base, card, units, paper: Paper, form: 'pdf' | 'html'} -> a card, or with the card 'today' the
//   sheet of the day, as a file to print.
// POST /api/pass {rig, base, card, ...Outcome} -> Recorded: a file of its own beside the rig, never changed after.
//   409 'refused' with the reason, among them a rig file that is not saved: a pass speaks of what is written.
// POST /api/test {rig, test, units, turn?} -> stream of Told of the question 'learning' about one test of the logbook
//   beside the rig, stage 'whole' alone: its channels, and what the missing newtons are due to.
//   After the whole answer comes {logbook: AnswerDocument}: the list of tests, which knows it from now on.
//   Stopped as an ask is. What is saved of the rig now does not matter: a test keeps the rig that it was made with.
// POST /api/samples {rig, test, channels: string[], from, to, pixels} -> Stretches: what was recorded between two
//   times, s, each channel in at most that many stretches with the least and the greatest of each.
// POST /api/upload {rig, name, upload?, at, bytes} -> Uploaded: a piece of a log, base64; without `upload` a new one
//   begins. POST /api/forget {rig, uploads} lets them go.
// POST /api/reading {rig, base, uploads, turn?} -> stream of ReadingTold: what the reader understood of the logs; nothing
//   is kept yet. Closing the stream before its end stops it.
// POST /api/keep {rig, base, reading, ...AboutTest} -> Kept; 409 'refused' with the reason, among them a rig file that is
//   not saved: a test keeps the rig that it was made with.
export interface Profiles {
    profiles: string[];
}

// ---- work that takes minutes -----------------------------------------------------------------------

// POST /api/jobs {} -> {jobs: Job[]}, the newest first. Every tab is told them down /api/watch too.
// POST /api/jobbegin {rig, base, kind: 'flights', profile?, flights, seed} | {rig, base, kind: 'pairs'} | {rig, kind:
//   'explain', test} -> {job: Job}. The same work is the same job: it goes on, with more flights where more are asked for.
//   `seed` is a text, empty for the usual one.
// POST /api/jobstop {job}, /api/jobresume {job} -> {job: Job}; /api/jobforget {job} -> {jobs: Job[]}.
// POST /api/jobanswer {job, units} -> AnswerDocument: what has come of it by now; of flights also while they are flown.
// POST /api/flown {rig, base, profile?, number, seed, units, turn?} -> stream of FlownTold: one flight by its number, as
//   an answer with strips and events, and as a path to be played. Stopped as an ask is.
export interface Job {
    job: number;
    rig: string;
    kind: 'flights' | 'pairs' | 'explain';
    /** What it is, in words. */
    title: string;
    state: 'waiting' | 'running' | 'stopped' | 'done' | 'failed';
    /** How it came to stand so; empty where nothing is to be told. */
    told: string;
    stage: string;
    /** How far it is and how long it lasts still, in words. */
    far: string;
    done: number;
    total: number;
    /** When it was asked for first, as an instant of ISO 8601. */
    begun: string;
    /** Why what came of it is old; absent where it is not. */
    stale?: string;
    profile?: string;
    flights?: number;
    seed?: string;
    test?: string;
}
export interface Begun {
    job: Job;
}
export type FlownTold = Told | { path: FlightPath };
/** Moment by moment: place x forward, y right, z down, m; turn w, x, y, z from the rig's axes to those of the place. */
export interface FlightPath {
    times: number[];
    places: number[];
    turns: number[];
    fans: number;
    /** Of every fan, N. */
    thrusts: number[];
    lines: string[];
    /** Of every line that holds, N. */
    pulls: number[];
}
export interface Uploaded {
    upload: string;
    /** Bytes that have come so far. */
    size: number;
}
export type ReadingTold =
    { read: LogRead } | { problems: LogProblem[] } | { refused: string } | { end: 'done' };
/** What was understood of the logs of one test. Texts of the files are untrusted. */
export interface LogRead {
    reading: string;
    files: LogFile[];
    rejected: {
        source: string;
        count: number;
        first: { line: number; reason: string; text: string }[];
    }[];
    /** `line` is 0 for the file as a whole. */
    notes: { source: string; line: number; text: string }[];
}
export interface LogFile {
    source: string;
    rows: number;
    /** By its own clock, s. */
    first: number;
    last: number;
    /** What its clock calls 0 s, where it tells a date. */
    begin?: string;
    /** How it stands to the clock of the test, in words. */
    clock: string;
    channels: { head: string; name: string; unit: string }[];
}
export interface LogProblem {
    source: string;
    line: number;
    column: string;
    found: string;
    expected: string;
    advice: string;
}
export interface AboutTest {
    /** A day, 2026-03-14. */
    date: string;
    /** Id of a card; empty for a test of its own. */
    card: string;
    /** Names with commas between, each perhaps with `=role`. */
    who: string;
    note: string;
}
export interface Kept {
    test: string;
    sentence: string;
}
export interface Stretches {
    channels: Stretch[];
}
/** What a channel was, thinned to pixels: a stretch that holds one sample has it as least and greatest. SI. */
export interface Stretch {
    channel: string;
    /** One for each stretch, ascending, s. */
    times: number[];
    low: number[];
    high: number[];
}
export type Paper = 'a4' | 'letter';
/** What came of a card, as it is signed. */
export interface Outcome {
    outcome: 'passed' | 'aborted' | 'failed' | 'unexplained';
    who: string;
    /** Clean runs in a row. */
    repeats: number;
    notes: string;
}
export interface Recorded {
    /** As which number, and what more it needs to count. */
    sentence: string;
}
export type Stage = 'nominal' | 'banded' | 'whole';
export type Told =
    | { stage: Stage; question: Question; document: AnswerDocument }
    | { progress: { question: Question; stage: string; done: number; total: number } }
    /** The rig cannot be asked: its file has errors, or what was declared makes no rig. */
    | { refused: string; question?: Question }
    | { end: 'done' | 'stopped' };
/** Down the stream of one test. */
export type TestTold = Told | { logbook: AnswerDocument };

/** What `review --json` writes (docs/reference/answers.md), with texts for the reader added. */
export interface AnswerDocument {
    schema: string;
    tool: { name: string; version: string };
    rig: { name?: string; digest: string };
    corrections: string;
    seed: number;
    answer: Answer;
    /** How each field that occurs is called and drawn on an axis: shown = si * per + plus. */
    fields: Record<string, FieldWords>;
}
/** A kind of number, from the table of fields. */
export interface FieldWords {
    label: string;
    unit: string;
    per: number;
    plus: number;
    /** One sentence; how it is computed; where that comes from; the test that checks it. */
    meaning?: string;
    formula?: string;
    source?: string;
    test?: string;
}
export interface Answer {
    question: Question;
    /**
     * In a nominal answer the outcome is 'not judged': no doubt was computed (or 'cannot be told', where
     * the declared values themselves could not be). A banded answer is 'not judged' where 256 draws do
     * not tell.
     */
    verdict: Verdict;
    findings: Finding[];
    sections: Section[];
    evidence: Record<string, unknown>;
}
export interface Verdict {
    outcome: 'met' | 'not met' | 'cannot be told' | 'not judged';
    /** The sentence in the reader's units. */
    shown: string;
    wouldTell?: { path: string; shown: string };
    downgrades: string[];
}
export interface Finding {
    severity: 'stops' | 'warns' | 'notes';
    code: string;
    part?: string;
    path?: string;
    shown: string;
    value?: Value;
    limit?: { value: Value; origin: string };
    cause: string;
    remedies: Remedy[];
}
export interface Remedy {
    number: number;
    /** What it does, in words. */
    shownName: string;
    /** What came of it, in words. */
    shownEffect: string;
    /** Whether it may be tried: refused ones may not. */
    effect: { kind: 'clears' | 'helps' | 'refused' };
    changes: Change[];
}
export interface Value {
    field: string;
    kind: 'amount' | 'words' | 'never' | 'not computed';
    /** With kind 'amount'. */
    si?: number;
    unit?: string;
    band?: { low: number; high: number; coverage: number; method: string; draws: number };
    /** With kind 'words'. */
    text?: string;
    /** With kind 'not computed'. */
    reason?: string;
    /** In the reader's units, without band; and the band alone, empty if none. */
    shown: string;
    shownBand: string;
}
export type Section =
    | Waterfall
    | Table
    | Plot
    | Drawing
    | Timeline
    | Shares
    | Playback
    | Matrix
    | Cases
    | Elevation
    | Card
    | Strips;
export interface WaterfallStep {
    label: string;
    value: Value;
    note: string;
}
export interface Waterfall {
    kind: 'waterfall';
    id: string;
    title: string;
    start: WaterfallStep;
    steps: WaterfallStep[];
    end: WaterfallStep;
    against: WaterfallStep;
}
export interface Table {
    kind: 'table';
    id: string;
    title: string;
    columns: string[];
    rows: Value[][];
}
export interface Plot {
    kind: 'plot';
    id: string;
    title: string;
    x: { field: string; unit: string };
    y: { field: string; unit: string };
    series: {
        label: string;
        mark: 'dot' | 'cross' | 'line' | 'dashes';
        points: [number, number][];
    }[];
    /** Stretches of x that have a name; absent where there are none. */
    zones?: Zone[];
}
/** SI. */
export interface Zone {
    label: string;
    from: number;
    to: number;
}
/** Layers are tables of places (place-forward, place-right, place-up in m), sizes and directions. */
export interface Drawing {
    kind: 'drawing';
    id: string;
    title: string;
    layers: Table[];
}
/** What comes when, a bar a part, in order of time; what is never reached comes last. */
export interface Timeline {
    kind: 'timeline';
    id: string;
    title: string;
    /** How far the calculation went. */
    horizon: Value;
    bars: {
        part: string;
        what: string;
        at: Value;
        hottest: Value;
        limit: Value;
        /** In words; may be empty. */
        where: string;
    }[];
}
/** One amount and what it consists of. */
export interface Shares {
    kind: 'shares';
    id: string;
    title: string;
    whole: Value;
    shares: { label: string; value: Value; share: Value }[];
}
/** How a number of every part goes with time: `values` and `limit` in the unit of y, one value for each of `times`. */
export interface Playback {
    kind: 'playback';
    id: string;
    title: string;
    x: { field: string; unit: string };
    y: { field: string; unit: string };
    times: number[];
    tracks: Track[];
}
export interface Track {
    part: string;
    kind: string;
    /** Forward, right, up, m; a point where both are one. */
    from: [number, number, number];
    to: [number, number, number];
    limit: number;
    values: number[];
}
/** What was measured beside what was to be expected, a strip a channel over one clock; SI, at most 2,000 points a strip. */
export interface Strips {
    kind: 'strips';
    id: string;
    title: string;
    strips: Strip[];
    events: StripEvent[];
}
export interface Strip {
    label: string;
    field: string;
    part: string;
    /** As it is called in the recording; absent where it is no channel of one. */
    channel?: string;
    times: number[];
    /** Any of the four may be empty. */
    measured: number[];
    expected: number[];
    low: number[];
    high: number[];
}
/** Something that happened, s. */
export interface StripEvent {
    time: number;
    label: string;
    part: string;
}
/** What is left under each fault; a cell is of its column's field. */
export interface Matrix {
    kind: 'matrix';
    id: string;
    title: string;
    columns: string[];
    lines: MatrixLine[];
}
export interface MatrixLine {
    part: string;
    /** How it fails. */
    what: string;
    /** What else does the very same when it fails. */
    members: string[];
    cells: { value: Value; standing: Standing }[];
}
/** Against what is asked; told where nothing is. */
export type Standing = 'holds' | 'short' | 'cannot be told' | 'told';
/** What becomes of the parts in each case: `lost` and `values`, in the unit of y, have one entry for each spot. */
export interface Cases {
    kind: 'cases';
    id: string;
    title: string;
    y: { field: string; unit: string };
    spots: { part: string; kind: string; at: [number, number, number] }[];
    cases: FailureCase[];
}
export interface FailureCase {
    /** Part, comma and what of the line of the matrix it belongs to. */
    label: string;
    outcome: string;
    lost: boolean[];
    values: number[];
}
/** A side view: metres across and up from the ground, newtons across and up. */
export interface Elevation {
    kind: 'elevation';
    id: string;
    title: string;
    x: { field: string; unit: string };
    y: { field: string; unit: string };
    shapes: ElevationShape[];
    loads: ElevationLoad[];
    /** The same in space, where the program tells it. */
    space?: Table[];
}
export interface ElevationShape {
    shape:
        | 'ground'
        | 'stand'
        | 'rig'
        | 'person'
        | 'anchor'
        | 'beam'
        | 'line'
        | 'down line'
        | 'platform'
        | 'mat'
        | 'keep out'
        | 'reach'
        | 'gantry';
    /** May be empty. */
    label: string;
    outline: [number, number][];
    closed: boolean;
}
export interface ElevationLoad {
    label: string;
    at: [number, number];
    across: number;
    up: number;
    value: Value;
}
/** A test card: one job with all that is needed to do it. */
export interface Card {
    kind: 'card';
    id: string;
    title: string;
    state: string;
    /** Its purpose, in the reader's units. */
    shown: string;
    blocks: CardBlock[];
}
export type CardBlock = CardLines | Table | Elevation;
export interface CardLines {
    kind: 'lines';
    title: string;
    style: 'plain' | 'tick' | 'number' | 'write';
    lines: { shown: string }[];
}
