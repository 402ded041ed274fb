package liftwright.answer;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import liftwright.answer.Section.Elevation;
import liftwright.answer.Section.Elevation.Load;
import liftwright.answer.Section.Elevation.Shape;
import liftwright.answer.Section.Elevation.Spot2;
import liftwright.answer.Section.Table;

/** A side view as tables: what pulls where, and how far each thing that is drawn reaches. */
final class ElevationTables {

    private ElevationTables() {}

    static List<Table> of(Elevation elevation) {
        return List.of(
                new Table(
                        elevation.id(),
                        elevation.title() + ": loads",
                        List.of(
                                "what",
                                "load",
                                "load-across",
                                "load-up",
                                Elevation.ACROSS,
                                Elevation.UP),
                        elevation.loads().stream().map(ElevationTables::load).toList()),
                new Table(
                        elevation.id() + "-places",
                        elevation.title() + ": places",
                        List.of("what", "shape", "from-across", "to-across", "from-up", "to-up"),
                        elevation.shapes().stream().map(ElevationTables::shape).toList()));
    }

    private static List<Value> load(Load load) {
        return List.of(
                Value.words("what", load.label()),
                load.value(),
                Value.of("load-across", load.acrossN()),
                Value.of("load-up", load.upN()),
                Value.of(Elevation.ACROSS, load.at().acrossM()),
                Value.of(Elevation.UP, load.at().upM()));
    }

    private static List<Value> shape(Shape shape) {
        String kind = shape.kind().word();
        return List.of(
                Value.words("what", shape.label().isEmpty() ? kind : shape.label()),
                Value.words("shape", kind),
                Value.of("from-across", along(shape, Spot2::acrossM).min().orElseThrow()),
                Value.of("to-across", along(shape, Spot2::acrossM).max().orElseThrow()),
                Value.of("from-up", along(shape, Spot2::upM).min().orElseThrow()),
                Value.of("to-up", along(shape, Spot2::upM).max().orElseThrow()));
    }

    private static DoubleStream along(Shape shape, ToDoubleFunction<Spot2> axis) {
        return shape.outline().stream().mapToDouble(axis);
    }
}
