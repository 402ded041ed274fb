import { HighlightStyle, syntaxHighlighting } from '@codemirror/language';
import { EditorView } from '@codemirror/view';
import { tags } from '@lezer/highlight';

// The tokens of the page reach into the shadow of the editor: light, dark and forced colours are theirs.

const base = EditorView.theme({
    '&': {
        height: '100%',
        color: 'var(--ink)',
        backgroundColor: 'var(--sheet)',
        fontSize: '0.8125rem',
    },
    '&.cm-focused': { outline: '2px solid var(--focus)', outlineOffset: '-2px' },
    '.cm-scroller': { fontFamily: 'var(--even)', lineHeight: '1.5' },
    '.cm-content': { caretColor: 'var(--ink)' },
    '.cm-cursor': { borderLeftColor: 'var(--ink)', borderLeftWidth: '2px' },
    '.cm-gutters': {
        color: 'var(--quiet)',
        backgroundColor: 'var(--sunk)',
        borderRight: '1px solid var(--line)',
    },
    '.cm-activeLine': { backgroundColor: 'transparent', boxShadow: 'inset 2px 0 var(--edge)' },
    '.cm-activeLineGutter': { color: 'var(--ink)', backgroundColor: 'transparent' },
    '&.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground, .cm-selectionBackground':
        { backgroundColor: 'var(--pick)' },
    '.cm-selectionMatch': { backgroundColor: 'var(--sunk)' },
    '.cm-shown-span': { boxShadow: '0 2px var(--accent)' },
    '.cm-shown': { backgroundColor: 'var(--pick)' },
    '.cm-panels, .cm-tooltip': {
        color: 'var(--ink)',
        backgroundColor: 'var(--sheet)',
        border: '1px solid var(--edge)',
    },
    '.cm-tooltip-autocomplete > ul > li[aria-selected]': {
        color: 'var(--on-accent)',
        backgroundColor: 'var(--accent)',
    },
    '.cm-tooltip.cm-completionInfo': { maxWidth: '20rem' },
    '.cm-textfield': {
        color: 'var(--ink)',
        backgroundColor: 'var(--sheet)',
        border: '1px solid var(--edge)',
        minHeight: '24px',
    },
    '.cm-button': {
        color: 'var(--ink)',
        backgroundColor: 'var(--sunk)',
        backgroundImage: 'none',
        border: '1px solid var(--edge)',
        minHeight: '24px',
    },
    '.cm-panel.cm-search [name=close]': {
        color: 'var(--ink)',
        minWidth: '24px',
        minHeight: '24px',
    },
    '.cm-searchMatch': {
        backgroundColor: 'var(--untold-wash)',
        outline: '1px solid var(--untold)',
    },
    '.cm-diagnostic-error': { borderLeft: '4px solid var(--unmet)' },
    '.cm-diagnostic-warning': { borderLeft: '4px solid var(--untold)' },
    '.cm-diagnostic-info': { borderLeft: '4px solid var(--edge)' },
    '.cm-lintRange': { backgroundImage: 'none' },
    '.cm-lintRange-error': { textDecoration: 'underline wavy var(--unmet)' },
    '.cm-lintRange-warning': { textDecoration: 'underline wavy var(--untold)' },
    '.cm-lintRange-info': { textDecoration: 'underline dotted var(--edge)' },
    // The marks of the library are pictures in data: addresses, which the policy does not allow.
    '.cm-lint-marker': { content: 'none', width: '1ch', height: 'auto', fontWeight: 'bold' },
    '.cm-lint-marker-error': { content: '"✖"', color: 'var(--unmet)' },
    '.cm-lint-marker-warning': { content: '"▲"', color: 'var(--untold)' },
    '.cm-lint-marker-info': { content: '"●"', color: 'var(--quiet)' },
});

const words = syntaxHighlighting(
    HighlightStyle.define([
        { tag: [tags.propertyName, tags.definition(tags.propertyName)], color: 'var(--accent)' },
        { tag: tags.comment, color: 'var(--quiet)', fontStyle: 'italic' },
        {
            tag: [tags.punctuation, tags.separator, tags.squareBracket, tags.brace],
            color: 'var(--quiet)',
        },
    ]),
);

export const look = [base, words];
