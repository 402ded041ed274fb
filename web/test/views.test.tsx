import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { asked, told, unasked } from '../src/core/verdicts';
import type { AnswerDocument, OutlineNode, Remedy, RigDocument } from '../src/core/wire';
import { Bay } from '../src/state/bay';
import { Page } from '../src/views/Page';

const HOSTILE = '<img src=x onerror=alert(1)>"\u202e';

function remedy(number: number, kind: Remedy['effect']['kind']): Remedy {
    return {
        number,
        shownName: `remedy ${number}`,
        shownEffect: 'clears it',
        effect: { kind },
        changes: [{ kind: 'set', at: 'wearer/mass', value: '60 kg' }],
    };
}

function answer(outcome: AnswerDocument['answer']['verdict']['outcome']): AnswerDocument {
    return {
        schema: '',
        tool: { name: 'liftwright', version: '0' },
        rig: { name: HOSTILE, digest: '' },
        corrections: 'none',
        seed: 1,
        fields: {},
        answer: {
            question: 'lift',
            verdict: { outcome, shown: `lift over weight 1.06 ${HOSTILE}`, downgrades: [HOSTILE] },
            findings: [
                {
                    severity: 'stops',
                    code: 'short',
                    part: 'corner.1',
                    path: 'wearer/mass',
                    shown: `too little ${HOSTILE}`,
                    cause: 'weight',
                    remedies: [remedy(1, 'clears'), remedy(2, 'refused')],
                },
            ],
            sections: [],
            evidence: {
                assumptions: [{ path: 'site/pressure', value: HOSTILE, origin: 'standard' }],
            },
        },
    };
}

const mass: OutlineNode = {
    path: 'wearer/mass',
    key: 'mass',
    value: '62 kg',
    line: 3,
    from: 20,
    to: 31,
    children: [],
};

function rigDocument(over: Partial<RigDocument> = {}): RigDocument {
    return {
        rig: 'rig.yaml',
        revision: 'r1',
        text: `rig: ${HOSTILE}\nwearer:\n  mass: 62 kg\n`,
        saved: true,
        readable: true,
        problems: [
            {
                code: 'x',
                severity: 'note',
                line: 3,
                column: 3,
                from: 20,
                to: 24,
                path: 'wearer/mass',
                found: HOSTILE,
                expected: 'a mass',
                suggestion: '',
            },
        ],
        parts: [],
        outline: [{ path: 'wearer', key: 'wearer', line: 2, from: 10, to: 31, children: [mass] }],
        ...over,
    };
}

let home: HTMLElement;
let bay: Bay;

beforeEach(() => {
    localStorage.clear();
    bay = new Bay();
    // No server: what is asked of it waits for ever.
    vi.spyOn(bay.server, 'call').mockReturnValue(new Promise(() => undefined));
    vi.spyOn(bay.server, 'stream').mockReturnValue(new Promise(() => undefined));
    home = document.createElement('div');
    document.body.append(home);
    bay.gate.state.value = 'in';
    bay.lay(rigDocument());
    draw();
});
afterEach(() => {
    render(null, home);
    home.remove();
});

function draw(change: () => void = () => undefined): void {
    void act(() => {
        change();
        render(<Page bay={bay} />, home);
    });
}

function answered(outcome: AnswerDocument['answer']['verdict']['outcome'], of = 'r1'): void {
    draw(() => {
        bay.asks.rungs.value = told(asked(unasked()), of, {
            stage: 'whole',
            question: 'lift',
            document: answer(outcome),
        });
    });
}

function button(name: RegExp): HTMLButtonElement {
    const found = Array.from(home.querySelectorAll('button')).find(each =>
        name.test(each.getAttribute('aria-label') ?? each.textContent),
    );
    if (found === undefined) throw new Error(`no button ${String(name)}`);
    return found;
}

function click(name: RegExp): void {
    void act(() => {
        button(name).click();
    });
}

describe('the ladder', () => {
    test('has the nine questions, each to be opened', () => {
        const rungs = Array.from(
            home.querySelectorAll('.ladder li button'),
            each => each.textContent,
        );
        expect(rungs.length).toBe(9);
        expect(rungs[0]).toMatch(/Will it lift me\?/);
    });

    test.each([
        ['met', 'is-met'],
        ['not met', 'is-unmet'],
        ['cannot be told', 'is-untold'],
        ['not judged', 'is-open'],
    ] as const)('says %s in words and as a mark', (outcome, kind) => {
        answered(outcome);
        const rung = home.querySelector('.ladder button');
        expect(rung?.querySelector('.verdict')?.textContent).toContain(`${outcome}: lift over`);
        expect(rung?.classList.contains(kind)).toBe(true);
        expect(rung?.querySelector('svg')?.getAttribute('aria-hidden')).toBe('true');
    });

    test('greys what was answered for another state of the rig, and from the first key on', () => {
        const old = () => home.querySelector('.ladder button')?.classList.contains('old');
        answered('met');
        expect(old()).toBe(false);
        answered('met', 'r0');
        expect(old()).toBe(true);
        expect(home.querySelector('.verdict-line')?.textContent).toContain('before your last');
        answered('met');
        draw(() => {
            bay.type('rig: other\n');
        });
        expect(old()).toBe(true);
    });
});

test('text from a file stays text, wherever it is shown', () => {
    answered('not met');
    void act(() => {
        for (const fold of home.querySelectorAll('details')) {
            fold.open = true;
            fold.dispatchEvent(new Event('toggle'));
        }
        bay.tell(HOSTILE);
        bay.tryOut(HOSTILE, []);
    });
    expect(home.querySelectorAll('img').length).toBe(0);
    expect(home.textContent.split('<img src=x').length - 1).toBeGreaterThan(6);
});

describe('a remedy', () => {
    test('is tried, and kept as one change that undo takes back', () => {
        answered('not met');
        const change = vi.spyOn(bay, 'change');
        click(/^Try this: remedy 1/);
        expect(change).not.toHaveBeenCalled();
        expect(bay.trial.tried.value?.label).toBe('remedy 1');
        click(/^Keep: remedy 1/);
        expect(change).toHaveBeenCalledExactlyOnceWith(
            [{ kind: 'set', at: 'wearer/mass', value: '60 kg' }],
            'remedy 1',
        );
        expect(bay.trial.tried.value).toBeUndefined();
    });

    test('keeps the focus on its button while that changes', () => {
        answered('not met');
        const before = button(/^Try this: remedy 1/);
        before.focus();
        click(/^Try this: remedy 1/);
        expect(document.activeElement).toBe(before);
        expect(before.textContent).toMatch(/^Keep/);
        void act(() => {
            home.querySelector<HTMLButtonElement>('.remedy button.plain')?.click();
        });
        expect(document.activeElement).toBe(before);
        expect(bay.trial.tried.value).toBeUndefined();
    });

    test('that is refused can be read and not tried', () => {
        answered('not met');
        expect(home.textContent).toContain('remedy 2');
        expect(() => button(/remedy 2/)).toThrow();
    });
});

test('what a finding names is looked at in the file', () => {
    answered('not met');
    click(/^Show me/);
    expect(bay.look.value).toEqual({ from: 20, to: 31 });
    expect(bay.selected.value).toBe('corner.1');
});

describe('the outline', () => {
    function field(): HTMLInputElement {
        const found = home.querySelector<HTMLInputElement>('.outline input');
        if (found === null) throw new Error('no field');
        return found;
    }
    function typed(value: string, key: string): void {
        void act(() => {
            field().value = value;
            field().dispatchEvent(new Event('input', { bubbles: true }));
        });
        void act(() => {
            field().dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
        });
    }

    test('changes a value by its path', () => {
        const change = vi.spyOn(bay, 'change');
        draw(() => {
            bay.outlined.value = true;
        });
        expect(field().value).toBe('62 kg');
        typed('70 kg', 'Enter');
        expect(change).toHaveBeenCalledExactlyOnceWith(
            [{ kind: 'set', at: 'wearer/mass', value: '70 kg' }],
            'set wearer/mass',
        );
    });

    test('gives up what was typed with Escape', () => {
        const change = vi.spyOn(bay, 'change');
        draw(() => {
            bay.outlined.value = true;
        });
        typed('70 kg', 'Escape');
        expect(field().value).toBe('62 kg');
        expect(change).not.toHaveBeenCalled();
    });
});

describe('keys', () => {
    const press = (key: string, held: KeyboardEventInit, at: EventTarget = document.body) => {
        void act(() => {
            at.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, ...held }));
        });
    };

    test('run the action of the button', () => {
        const save = vi.spyOn(bay, 'save');
        press('s', { ctrlKey: true });
        expect(save).not.toHaveBeenCalled(); // nothing is unsaved
        draw(() => {
            bay.type('rig: other\n');
        });
        press('s', { ctrlKey: true });
        expect(save).toHaveBeenCalledOnce();
        click(/^Save/);
        expect(save).toHaveBeenCalledTimes(2);
    });

    test('open a question, and leave letters to the field they are typed in', () => {
        press('2', { altKey: true });
        expect(bay.open.value).toBe('endurance');
        press('?', { shiftKey: true }, home.querySelector('textarea') ?? document.body);
        expect(bay.helping.value).toBe(false);
        press('?', { shiftKey: true });
        expect(bay.helping.value).toBe(true);
    });
});

test('two versions of the same lines are shown, and the choice is the reader’s', () => {
    const settle = vi.spyOn(bay, 'settle').mockImplementation(() => undefined);
    draw(() => {
        const view = bay.desk.value;
        if (view !== undefined) {
            bay.desk.value = { ...view, clash: { mine: 'a\nmine\n', theirs: 'a\ntheirs\n' } };
        }
    });
    const texts = Array.from(home.querySelectorAll('.versions pre'), each => each.textContent);
    expect(texts).toEqual(['a\nmine\n', 'a\ntheirs\n']);
    click(/^Take this one/);
    expect(settle).toHaveBeenCalledExactlyOnceWith('theirs');
});

test('every page says that it is a calculation', () => {
    expect(home.querySelector('footer')?.textContent).toContain(
        'This is a calculation, not a certificate',
    );
});
