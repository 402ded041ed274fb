package liftwright.answer;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every kind of number that answers show (architecture contract 11). The reference page is made of
 * this table; a value whose field has no row here cannot be written.
 */
public final class Fields {

    private static final Map<String, Field> BY_ID = byId();

    private Fields() {}

    /** In reading order. */
    public static List<Field> all() {
        return List.copyOf(BY_ID.values());
    }

    public static Optional<Field> find(String id) {
        return Optional.ofNullable(BY_ID.get(id));
    }

    /**
     * @throws IllegalArgumentException if the table has no such row
     */
    public static Field of(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no field " + id));
    }

    private static Map<String, Field> byId() {
        var rows = new LinkedHashMap<String, Field>();
        Stream.of(
                        LiftFields.ROWS,
                        EnduranceFields.ROWS,
                        HeatFields.ROWS,
                        BalanceFields.ROWS,
                        FailureFields.ROWS,
                        AttributionFields.ROWS,
                        SearchFields.ROWS,
                        CompareFields.ROWS,
                        DrawingFields.ROWS,
                        SupplyFields.ROWS,
                        TimelineFields.ROWS,
                        MatrixFields.ROWS,
                        RunawayFields.ROWS,
                        WiringFields.ROWS,
                        PeopleFields.ROWS,
                        KillFields.ROWS,
                        StandFields.ROWS,
                        RestraintFields.ROWS,
                        PredictionFields.ROWS,
                        ProgrammeFields.ROWS,
                        BenchFields.ROWS,
                        DayFields.ROWS,
                        CardFields.ROWS,
                        MeasuringFields.ROWS,
                        SoundFields.ROWS,
                        LogbookFields.ROWS,
                        NameFields.ROWS,
                        LearningFields.ROWS,
                        DispersionFields.ROWS,
                        FlightFields.ROWS,
                        PilotFields.ROWS)
                .flatMap(List::stream)
                .forEach(
                        field -> {
                            if (rows.put(field.id(), field) != null) {
                                throw new IllegalStateException("two fields " + field.id());
                            }
                        });
        return rows;
    }
}
