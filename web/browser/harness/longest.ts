import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files that take a minute or more, the longest first: begun late, one would run alone at the end. */
const long = ['looks', 'jobs', 'cards', 'journeys', 'solid', 'trouble', 'files'];

function place(file: TestSpecification): number {
    const at = long.findIndex(name => file.moduleId.endsWith(`/${name}.test.ts`));
    return at < 0 ? long.length : at;
}

/** The order of a fresh checkout, which has no times of an earlier run. */
export class LongestFirst extends BaseSequencer {
    override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
        return (await super.sort(files)).sort((one, other) => place(one) - place(other));
    }
}
