package liftwright.report;

import liftwright.answer.Field;
import liftwright.answer.Finding;
import liftwright.answer.Remedy;
import liftwright.answer.Sentence;
import liftwright.answer.Texts;
import liftwright.answer.Value;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;

/** The texts of a page: the words and numbers of the reports, made harmless. */
public final class ReaderTexts implements Texts {

    private final Figures figures;
    private final QuantityFormat format;
    private final Door door = new Door(false);

    /**
     * @param units of the reader
     */
    public ReaderTexts(UnitSystem units) {
        figures = new Figures(new Look(Look.WIDEST, false, false, units));
        format = new QuantityFormat(units, false);
    }

    @Override
    public String value(Value value) {
        return door.escaped(figures.bare(value));
    }

    @Override
    public String beside(double sizeSi, Value value) {
        return door.escaped(figures.beside(sizeSi, value));
    }

    @Override
    public String band(Value value) {
        String band = figures.band(value);
        return band.isEmpty() ? "" : band.substring(1, band.length() - 1);
    }

    @Override
    public String sentence(Sentence sentence) {
        return door.escaped(figures.sentence(sentence));
    }

    @Override
    public String effect(Remedy remedy, Finding.Severity severity) {
        return door.escaped(FindingWords.effect(remedy, severity, figures).substring(2));
    }

    @Override
    public Scale scale(Field field, double sizeSi) {
        double plus = format.inUnit(field.measure(), 0, sizeSi);
        return new Scale(
                format.unitText(field.measure(), sizeSi),
                format.inUnit(field.measure(), 1, sizeSi) - plus,
                plus);
    }
}
