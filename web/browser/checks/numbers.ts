import type { Page } from 'playwright-core';
import { bringChecks } from '../harness/inpage';
import { run } from '../harness/program';
import type { Shown } from '../inpage/numbers';

/** Every number of the command line's answers, by what it is called. */
export class CommandLine {
    private readonly told = new Set<string>();
    private readonly bare = new Set<number>();

    private constructor(readonly documents: unknown[]) {
        documents.forEach(document => {
            this.take(document);
        });
    }

    /** One command for each question; all questions in one where none is named. */
    static async of(rig: string, ...questions: string[]): Promise<CommandLine> {
        const commands = questions.length === 0 ? [[rig]] : questions.map(each => [each, rig]);
        const lines = await Promise.all(commands.map(words => run('review', ...words, '--json')));
        return CommandLine.told(lines);
    }

    /** What commands printed with --json. */
    static told(lines: readonly string[]): CommandLine {
        return new CommandLine(
            lines
                .flatMap(line => line.split('\n'))
                .filter(line => line.trim() !== '')
                .map(line => JSON.parse(line) as unknown),
        );
    }

    get count(): number {
        return this.told.size;
    }

    private take(value: unknown): void {
        if (typeof value === 'number') {
            this.bare.add(value);
        } else if (typeof value === 'object' && value !== null) {
            if ('field' in value && 'si' in value && typeof value.field === 'string') {
                const band = ('band' in value ? value.band : undefined) as
                    { low: number; high: number } | undefined;
                this.told.add(key(value.field, Number(value.si), band?.low, band?.high));
            }
            Object.values(value).forEach(within => {
                this.take(within);
            });
        }
    }

    /** Whether these very digits were told, under this name and with this band. */
    tells(shown: Shown): boolean {
        if (shown.field === '') {
            return this.bare.has(shown.si);
        }
        return this.told.has(key(shown.field, shown.si, shown.low, shown.high));
    }
}

function key(field: string, si: number, low?: number, high?: number): string {
    return [field, si, low ?? '', high ?? ''].join(' ');
}

/** The numbers of the page, and those of them that the command line does not tell. */
export async function numbersAgainst(
    page: Page,
    commandLine: CommandLine,
): Promise<{ shown: Shown[]; strange: Shown[] }> {
    await bringChecks(page);
    const shown = await page.evaluate(() => inPage.shownNumbers());
    return { shown, strange: shown.filter(one => !commandLine.tells(one)) };
}
