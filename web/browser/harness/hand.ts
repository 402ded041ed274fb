import type { Locator, Page } from 'playwright-core';
import type { Question } from '../../src/core/wire';

/** What the questions are called on the page. */
export const asked: Record<Question, string> = {
    lift: 'Will it lift me?',
    endurance: 'For how long?',
    heat: 'What gives out first, and when?',
    balance: 'Is it balanced, and which way will it turn?',
    failures: 'What if something fails?',
    restraint: 'What must hold it down?',
    flight: 'Will the flight computer hold it?',
    trials: 'How do I test it without hurting anyone?',
    learning: 'Why did it not do what was promised?',
};
export const questions = Object.keys(asked) as Question[];

/** Where nominal answers are told while a part is dragged. */
export const nominalTexts = '.ladder .with-it, .telling .told';

/** Remedies of a rig that is short are searched for; a machine may have other work. */
const patience = { timeout: process.env['LIFTWRIGHT_MEASURED'] === undefined ? 60_000 : 600_000 };

export interface Grip {
    x: number;
    y: number;
}

/** What somebody does at the page, by the names that a reader of the screen hears. */
export class Hand {
    /** How often a key, the pointer or a field was used, typing in one field counted once. */
    actions = 0;
    readonly ladder: Locator;
    readonly sheet: Locator;
    readonly file: Locator;

    constructor(readonly page: Page) {
        this.ladder = page.getByRole('navigation', { name: 'Questions' });
        this.sheet = page.getByRole('main');
        this.file = page.getByRole('region', { name: 'Rig file' });
    }

    private count<T>(what: Promise<T>): Promise<T> {
        this.actions++;
        return what;
    }

    rung(question: Question): Locator {
        return this.ladder.getByRole('button', { name: asked[question] });
    }

    async open(question: Question): Promise<void> {
        await this.count(this.rung(question).click());
        await this.sheet.getByRole('heading', { level: 2, name: asked[question] }).waitFor();
    }

    /** The sentence on the sheet of the question that is open. */
    get verdict(): Locator {
        return this.sheet.locator('.verdict-line .verdict');
    }

    /** The first verdict of any stage of the open question is there. */
    async nominal(): Promise<void> {
        await this.verdict.waitFor();
    }

    /** The open question has its outcome, whole or not yet. */
    async banded(within = patience): Promise<void> {
        await this.page.waitForFunction(
            () => {
                const line = document.querySelector('.verdict-line');
                const told = line?.querySelector('.verdict strong')?.textContent ?? '';
                return (
                    line?.classList.contains('old') === false &&
                    ['met', 'not met', 'cannot be told'].includes(told)
                );
            },
            undefined,
            within,
        );
    }

    /** Heat is drawn. Its end may take a minute, which no look at the page needs. */
    async warmed(): Promise<void> {
        await this.sheet.locator('figure.playback').waitFor(patience);
    }

    /** What fails is drawn. */
    async failed(): Promise<void> {
        await this.sheet.locator('figure.matrix').waitFor(patience);
        await this.sheet.locator('figure.cases').waitFor(patience);
    }

    /** The cards stand there for the rig as it is; which are open is told to the end only when all is answered. */
    async laid(): Promise<void> {
        await this.sheet.locator('.trials:not(.old) .card-row').first().waitFor(patience);
    }

    /** The open question is answered to its end, for the rig as it stands; what takes long is drawn. */
    async answered(): Promise<void> {
        const open = (question: Question) =>
            this.sheet.getByRole('heading', { level: 2, name: asked[question] }).isVisible();
        if (await open('heat')) {
            await this.warmed();
        } else if (await open('failures')) {
            await this.failed();
        } else if (await open('trials')) {
            await this.laid();
        } else if (await open('learning')) {
            await this.whole();
        } else {
            await this.whole();
        }
    }

    /** The open question is answered to its end. */
    async whole(within = patience): Promise<void> {
        await this.banded(within);
        await this.page.waitForFunction(
            () => {
                const line = document.querySelector('.verdict-line');
                const state = line?.querySelector('.state')?.textContent ?? '';
                return line?.classList.contains('old') === false && state.trim() === '';
            },
            undefined,
            within,
        );
    }

    /** Every question is answered to its end, but heat, failures and what rests on them, which are asked last. */
    async allAnswered(): Promise<void> {
        await this.answered();
        await this.page.waitForFunction(
            last =>
                [...document.querySelectorAll('.ladder li')]
                    .filter(rung => !last.some(words => rung.textContent.includes(words)))
                    .every(
                        rung =>
                            rung.querySelector('progress') === null &&
                            !/being (judged|answered)/.test(rung.textContent),
                    ),
            [asked.heat, asked.failures, asked.trials],
            patience,
        );
    }

    /** A change of the rig has arrived, and the open question has its outcome for it. */
    async changed(): Promise<void> {
        await this.page.getByText('not saved to the file yet').waitFor();
        await this.banded();
    }

    /** The rig seen from one side. */
    view(from: 'behind' | 'above' | 'right side'): Locator {
        const words = {
            behind: 'from behind',
            above: 'from above',
            'right side': 'from its right side',
        };
        return this.sheet.getByRole('group', { name: `seen ${words[from]}` });
    }

    part(id: string, from: 'behind' | 'above' | 'right side' = 'behind'): Locator {
        return this.view(from).getByRole('button', { name: new RegExp(`^${escaped(id)},`) });
    }

    /** Takes a part by the pointer; where the pointer holds it. */
    async grab(id: string, from: 'behind' | 'above' | 'right side' = 'behind'): Promise<Grip> {
        const grip = await this.free(this.part(id, from));
        await this.page.mouse.move(grip.x, grip.y);
        await this.page.mouse.down();
        return grip;
    }

    /** A point of the part that no nearer part covers; an answer that comes may move it meanwhile. */
    private async free(part: Locator): Promise<Grip> {
        for (let tries = 1; ; tries++) {
            await part.scrollIntoViewIfNeeded();
            const found = await part.evaluate(element => {
                const box = element.getBoundingClientRect();
                for (let i = 1; i < 10; i++) {
                    for (let k = 1; k < 10; k++) {
                        const x = box.x + (box.width * ((i * 7) % 10)) / 10;
                        const y = box.y + (box.height * ((k * 7) % 10)) / 10;
                        // Not on its very rim: a pixel beside it must be the part as well.
                        const around = [
                            [0, 0],
                            [1, 1],
                            [-1, -1],
                        ].map(([dx = 0, dy = 0]) => document.elementFromPoint(x + dx, y + dy));
                        if (around.every(top => top !== null && element.contains(top))) {
                            return { x, y };
                        }
                    }
                }
                return null;
            });
            if (found !== null) {
                return found;
            }
            if (tries === 10) {
                throw new Error('the part lies under others');
            }
            await this.page.waitForTimeout(200);
        }
    }

    async drag(id: string, dx: number, dy: number, from?: 'behind' | 'above' | 'right side') {
        const grip = await this.grab(id, from);
        await this.page.mouse.move(grip.x + dx / 2, grip.y + dy / 2);
        await this.page.mouse.move(grip.x + dx, grip.y + dy);
        await this.page.mouse.up();
        this.actions++;
    }

    /** Puts a part that is held back to where it stood. */
    async giveUp(): Promise<void> {
        await this.page.keyboard.press('Escape');
        await this.page.mouse.up();
    }

    async press(name: string | RegExp, within: Locator | Page = this.page): Promise<void> {
        await this.count(within.getByRole('button', { name }).first().click());
    }

    /** Runs an entry of the menu. */
    async menu(name: string | RegExp): Promise<void> {
        await this.press('Menu');
        const sheet = this.page.locator('#menu');
        await this.press(name, sheet);
    }

    async save(): Promise<void> {
        await this.press(/^Save( |$)/);
        await this.page.getByText('saved', { exact: true }).waitFor();
    }

    async fill(label: string | RegExp, value: string, within: Locator | Page = this.page) {
        await this.count(within.getByLabel(label).first().fill(value));
    }

    async choose(label: string | RegExp, value: string, within: Locator | Page = this.page) {
        await this.count(within.getByLabel(label).first().selectOption(value));
    }

    /** The text of the rig file under the cursor. */
    get text(): Locator {
        return this.file.getByRole('textbox', { name: 'Text of the rig file' });
    }

    /** Types at the end of the file. */
    async typeAtEnd(text: string): Promise<void> {
        await this.text.click();
        await this.page.keyboard.press('Control+End');
        await this.page.keyboard.type(text);
    }
}

function escaped(text: string): string {
    return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
