package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import liftwright.answer.Finding;
import liftwright.answer.Value;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Demands;
import liftwright.rig.Element;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;
import liftwright.rig.file.RigReading;

/** Wirings that tests put together, and example rigs with pieces replaced. */
final class Sketch {

    final Set<String> packs = new TreeSet<>();
    final Set<String> fans = new TreeSet<>();
    final List<Wiring.Chain> chains = new ArrayList<>();
    private int elements;

    static Rig example(String name, String... replacements) {
        String text;
        try {
            text = Files.readString(Path.of("..", "examples", name, "rig.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (int k = 0; k < replacements.length; k += 2) {
            assertThat(text).contains(replacements[k]);
            text = text.replace(replacements[k], replacements[k + 1]);
        }
        RigReading read = RigReading.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8));
        assertThat(read.rig()).as("%s", read.problems()).isPresent();
        return read.rig().orElseThrow();
    }

    /** A rig of one pack and more whose wiring is this one. */
    static Rig rewired(List<Wiring.Chain> chains) {
        Rig base = example("sandpiper");
        return rewired(base, chains, base.demands(), base.packs().size());
    }

    /** The rig with other wiring and demands, and its first packs only. */
    static Rig rewired(Rig base, List<Wiring.Chain> chains, Demands demands, int packs) {
        return new Rig(
                base.name(),
                base.revision(),
                base.note(),
                base.site(),
                demands,
                base.limits(),
                base.wearer(),
                base.mounts(),
                base.fanTypes(),
                base.fans(),
                base.cellTypes(),
                base.packs().subList(0, packs),
                new Wiring(chains, List.of(), Optional.empty()),
                base.otherParts(),
                base.control(),
                base.declaration(),
                base.tables(),
                base.defaults());
    }

    static Quantity si(double value) {
        return Quantity.exact(value, Dimension.NONE);
    }

    static double si(Finding finding) {
        return si(finding.value().orElseThrow());
    }

    static double si(Value value) {
        return ((Value.Figure.Amount) value.figure()).si();
    }

    static String words(Value value) {
        return ((Value.Figure.Words) value.figure()).text();
    }

    private PartId id(String kind) {
        return new PartId(kind + "." + elements++);
    }

    private static RigPath at(PartId id) {
        return RigPath.of("wiring", id.text());
    }

    Element run(int gauge, double lengthM) {
        PartId id = id("run");
        return new Element.Run(id, at(id), gauge, 1, si(lengthM));
    }

    Element fuse(double ratingA) {
        PartId id = id("fuse");
        return new Element.Fuse(
                id, at(id), si(ratingA), si(1e-3), Optional.empty(), Optional.empty());
    }

    Element joint(double ratingA) {
        PartId id = id("joint");
        return new Element.Joint(id, at(id), "bullet 6 mm", si(3e-4), Optional.of(si(ratingA)));
    }

    void chain(String from, String to, Element... through) {
        chains.add(
                new Wiring.Chain(new PartId("chain." + chains.size()), from, to, List.of(through)));
    }

    Graph graph() {
        return new Graph(chains, packs, fans);
    }

    /** Packs, buses and fans joined at random, each chain fused or not: loops and islands too. */
    static Sketch random(RandomGenerator random, double fused) {
        Sketch sketch = new Sketch();
        List<String> nodes = new ArrayList<>();
        for (int k = random.nextInt(1, 5); k > 0; k--) {
            sketch.packs.add("p." + k);
        }
        for (int k = random.nextInt(1, 6); k > 0; k--) {
            sketch.fans.add("f." + k);
        }
        nodes.addAll(sketch.packs);
        nodes.addAll(sketch.fans);
        for (int k = random.nextInt(0, 4); k > 0; k--) {
            nodes.add("bus" + k);
        }
        for (int k = random.nextInt(1, 2 * nodes.size()); k > 0; k--) {
            String from = nodes.get(random.nextInt(nodes.size()));
            String to = nodes.get(random.nextInt(nodes.size()));
            if (from.equals(to)) {
                continue;
            }
            List<Element> through = new ArrayList<>();
            for (int n = random.nextInt(0, 3); n > 0; n--) {
                through.add(
                        random.nextBoolean()
                                ? sketch.run(10, random.nextDouble(0.05, 1))
                                : sketch.joint(100));
            }
            if (random.nextDouble() < fused) {
                through.add(random.nextInt(through.size() + 1), sketch.fuse(60));
            }
            sketch.chain(from, to, through.toArray(Element[]::new));
        }
        return sketch;
    }
}
