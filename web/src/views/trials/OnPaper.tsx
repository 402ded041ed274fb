import { useBay } from '../context';

/** A card, or the sheet of the day, as a file to print. */
export function OnPaper({ card, title }: { card: string; title: string }) {
    const bay = useBay();
    const paper = bay.taste.paper.value;
    return (
        <div class="row on-paper" role="group" aria-label={`On paper: ${title}`}>
            <label class="pick">
                <span>Paper</span>
                <select
                    value={paper}
                    onChange={event => {
                        bay.taste.paper.value =
                            event.currentTarget.value === 'letter' ? 'letter' : 'a4';
                    }}
                >
                    <option value="a4">A4</option>
                    <option value="letter">Letter</option>
                </select>
            </label>
            {(['pdf', 'html'] as const).map(form => (
                <button
                    key={form}
                    type="button"
                    class="plain"
                    onClick={() => void bay.cards.keep(card, form, paper)}
                >
                    Save as {form.toUpperCase()}
                </button>
            ))}
        </div>
    );
}
