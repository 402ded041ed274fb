import {
    autocompletion,
    closeBrackets,
    closeBracketsKeymap,
    completionKeymap,
    type CompletionContext,
    type CompletionResult,
} from '@codemirror/autocomplete';
import { defaultKeymap } from '@codemirror/commands';
import { yaml } from '@codemirror/lang-yaml';
import { bracketMatching, indentOnInput, indentUnit } from '@codemirror/language';
import { lintGutter, lintKeymap, setDiagnostics, type Diagnostic } from '@codemirror/lint';
import { highlightSelectionMatches, search, searchKeymap } from '@codemirror/search';
import {
    Annotation,
    EditorState,
    StateEffect,
    StateField,
    Transaction,
    type Extension,
} from '@codemirror/state';
import {
    Decoration,
    EditorView,
    drawSelection,
    highlightActiveLine,
    highlightActiveLineGutter,
    keymap,
    lineNumbers,
    type DecorationSet,
} from '@codemirror/view';
import { difference } from '../../core/merge';
import type { Completion, Problem } from '../../core/wire';
import type { Bay, Look } from '../../state/bay';
import { placedWords } from '../../core/problems';
import { look as lookOfText } from './look';

/** A change that came from the document and not from whoever types. */
const fromDesk = Annotation.define<boolean>();
const shown = StateEffect.define<Look | undefined>();

/** The lines that the reader was shown. */
const shownLines = StateField.define<DecorationSet>({
    create: () => Decoration.none,
    update(lines, transaction) {
        let now = lines.map(transaction.changes);
        for (const effect of transaction.effects) {
            if (effect.is(shown)) now = linesIn(transaction.state, effect.value);
        }
        return now;
    },
    provide: field => EditorView.decorations.from(field),
});

const span = Decoration.mark({ class: 'cm-shown-span' });

function linesIn(state: EditorState, at: Look | undefined): DecorationSet {
    if (at === undefined) return Decoration.none;
    const first = state.doc.lineAt(at.from).number;
    const last = state.doc.lineAt(Math.max(at.from, at.to)).number;
    const mark = Decoration.line({ class: 'cm-shown' });
    const lines = [];
    for (let number = first; number <= last; number++) {
        lines.push(mark.range(state.doc.line(number).from));
    }
    if (at.to > at.from) lines.push(span.range(at.from, at.to));
    return Decoration.set(lines, true);
}

/** The text of the rig file under the hand. It has no history of its own: undo is that of the document. */
export class RigEditor {
    private readonly view: EditorView;

    constructor(
        host: HTMLElement,
        private readonly bay: Bay,
        text: string,
    ) {
        const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
        root.replaceChildren();
        this.view = new EditorView({
            root,
            parent: root,
            state: EditorState.create({ doc: text, extensions: this.extensions() }),
        });
    }

    destroy(): void {
        this.view.destroy();
    }

    /** The document's text is this; the cursor stays where nothing changed. */
    hold(text: string): void {
        const change = difference(this.view.state.doc.toString(), text);
        if (change === undefined) return;
        this.view.dispatch({
            changes: change,
            annotations: [fromDesk.of(true), Transaction.addToHistory.of(false)],
        });
    }

    mark(problems: Problem[]): void {
        const length = this.view.state.doc.length;
        const diagnostics = problems.map((problem): Diagnostic => {
            const from = Math.min(problem.from, length);
            return {
                from,
                to: Math.min(Math.max(from, problem.to), length),
                severity: problem.severity === 'note' ? 'info' : problem.severity,
                message: placedWords(problem),
            };
        });
        this.view.dispatch(setDiagnostics(this.view.state, diagnostics));
    }

    look(at: Look): void {
        const length = this.view.state.doc.length;
        const from = Math.min(at.from, length);
        const to = Math.min(Math.max(from, at.to), length);
        this.view.dispatch({
            selection: { anchor: from },
            effects: [
                shown.of({ from, to }),
                EditorView.scrollIntoView(from, { y: 'center', x: 'start' }),
            ],
            annotations: fromDesk.of(true),
        });
    }

    private extensions(): Extension[] {
        return [
            lineNumbers(),
            lintGutter(),
            highlightActiveLine(),
            highlightActiveLineGutter(),
            drawSelection(),
            indentOnInput(),
            bracketMatching(),
            closeBrackets(),
            highlightSelectionMatches(),
            search({ top: true }),
            shownLines,
            indentUnit.of('  '),
            EditorState.tabSize.of(2),
            EditorView.lineWrapping,
            yaml(),
            lookOfText,
            autocompletion({ override: [context => this.complete(context)], icons: false }),
            keymap.of([
                ...closeBracketsKeymap,
                ...completionKeymap,
                ...searchKeymap,
                ...lintKeymap,
                ...defaultKeymap,
            ]),
            EditorView.contentAttributes.of({
                'aria-label': 'Text of the rig file',
                tabindex: '0',
            }),
            EditorView.updateListener.of(update => {
                if (!update.docChanged) return;
                if (update.transactions.some(each => each.annotation(fromDesk))) return;
                this.bay.type(update.state.doc.toString());
            }),
        ];
    }

    private async complete(context: CompletionContext): Promise<CompletionResult | null> {
        const before = context.matchBefore(/[\w-]+/);
        if (before === null && !context.explicit) return null;
        const reply = await this.bay.server.call<Completion>('/api/complete', {
            text: context.state.doc.toString(),
            from: context.pos,
        });
        if (reply.kind !== 'done' || context.aborted) return null;
        const { from, to, options } = reply.value;
        return {
            from,
            to,
            options: options.map(({ label, insert, detail }) => ({
                label,
                apply: insert,
                info: detail,
            })),
            filter: true,
            validFor: /^[\w -]*$/,
        };
    }
}
