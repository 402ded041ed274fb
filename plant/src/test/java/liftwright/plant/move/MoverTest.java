package liftwright.plant.move;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.regex.Pattern;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.file.RigReading;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Any part of any rig, sent to any place: the changed file puts it there, and nothing else. */
class MoverTest {

    private static final double STAYS_M = 3e-5;

    private int moved;
    private int along;

    private static RigReading read(String text) {
        return RigReading.read("rig.yaml", text.getBytes(UTF_8));
    }

    @Test
    void anyPartOfAnyRigGoesWhereItIsSentAndNothingElseUnsaid() {
        Seeded.check(250, this::oneMove);
        if (System.getProperty("seed") == null) {
            assertThat(moved).as("moved").isGreaterThan(220);
            assertThat(along).as("others that went along").isGreaterThan(150);
        }
    }

    private void oneMove(RandomGenerator random) {
        String text = PlacedRigs.text(random);
        RigReading before = read(text);
        Rig rig = before.rig().orElseThrow(() -> new AssertionError(before.problems() + text));
        Map<String, Vec3> places = PlaceReferee.places(rig);
        var ids = new ArrayList<>(places.keySet());
        String id = ids.get(random.nextInt(ids.size()));
        Vec3 from = at(places, id);
        Vec3 to =
                new Vec3(
                        from.x() + (random.nextInt(3) == 0 ? 0 : random.nextDouble(-0.2, 0.2)),
                        from.y() + (random.nextInt(3) == 0 ? 0 : random.nextDouble(-0.2, 0.2)),
                        from.z() + (random.nextInt(3) == 0 ? 0 : random.nextDouble(-0.2, 0.2)));
        var wish =
                new Wish(
                        id, to, random.nextBoolean(), random.nextBoolean(), random.nextInt(4) == 0);
        Mover mover = Mover.of(before).orElseThrow();
        assertThat(mover.whyNot(id)).isEmpty();
        assertThat(mover.place(id).orElseThrow().minus(from).length()).isLessThan(1e-9);
        switch (mover.move(wish)) {
            case Outcome.Stays(var why) -> {
                assertThat(why)
                        .as("%s", wish)
                        .startsWith("There ")
                        .containsAnyOf("outboard", "twin");
            }
            case Outcome.Moved outcome -> {
                moved++;
                check(before, places, wish, mover, outcome);
            }
        }
    }

    private void check(
            RigReading before,
            Map<String, Vec3> places,
            Wish wish,
            Mover mover,
            Outcome.Moved outcome) {
        String told = wish + "\n" + outcome + "\n" + before.text().text();
        RigReading after =
                switch (before.with(outcome.changes())) {
                    case RigReading.Edit.Changed(var reading, var _) -> reading;
                    case RigReading.Edit.Refused refused -> fail(refused + "\n" + told);
                };
        Map<String, Vec3> now = PlaceReferee.places(after.rig().orElseThrow());
        Vec3 stands = at(now, wish.part());
        assertThat(stands.minus(outcome.place()).length()).as(told).isLessThan(1e-9);
        assertThat(stands.minus(wish.to()).length())
                .as(told)
                .isLessThan(wish.snap() ? Math.sqrt(3) * 8.01e-3 : 1.3e-3);
        var elsewhere = new LinkedHashSet<String>();
        now.forEach(
                (id, place) -> {
                    if (place.minus(at(places, id)).length() > STAYS_M) {
                        elsewhere.add(id);
                    }
                });
        assertThat(new LinkedHashSet<>(outcome.parts())).as(told).isEqualTo(elsewhere);
        elsewhere.remove(wish.part());
        along += elsewhere.size();
        boolean all = wish.part().startsWith("mounts/") || outcome.sentence().contains(" more.");
        if (!all) {
            elsewhere.forEach(
                    id -> assertThat(outcome.sentence()).as(told).contains("“" + id + "”"));
        }
        twins(wish, mover, places, now, told);
        jets(before.rig().orElseThrow(), after.rig().orElseThrow(), outcome.sentence());
        assertThat(marks(after.text().text(), "#.*")).isEqualTo(marks(before.text().text(), "#.*"));
        assertThat(marks(after.text().text(), "±"))
                .as(told)
                .isEqualTo(marks(before.text().text(), "±"));
        assertThat(after.rig().orElseThrow().fans().stream().map(f -> f.id().text() + f.spin()))
                .isEqualTo(
                        before.rig().orElseThrow().fans().stream()
                                .map(f -> f.id().text() + f.spin())
                                .toList());
    }

    private static void jets(Rig before, Rig after, String sentence) {
        boolean turned = false;
        for (int k = 0; k < before.fans().size(); k++) {
            var was = before.fans().get(k);
            var is = after.fans().get(k);
            turned |= !was.leans().equals(is.leans()) || !was.blows().equals(is.blows());
        }
        assertThat(sentence.contains("jet of")).isEqualTo(turned);
    }

    /** A twin that is not asked along stays, where the format can say so. */
    private static void twins(
            Wish wish, Mover mover, Map<String, Vec3> places, Map<String, Vec3> now, String told) {
        Optional<String> twin = mover.twin(wish.part());
        boolean other = wish.part().contains("shell") || wish.part().startsWith("mounts/");
        if (twin.isPresent() && !other && !wish.twin() && !wish.whole()) {
            Vec3 was = at(places, twin.get());
            assertThat(at(now, twin.get()).minus(was).length()).as(told).isLessThan(STAYS_M);
        }
        if (twin.isPresent() && !other && wish.twin()) {
            assertThat(at(now, twin.get()).minus(at(places, twin.get())).length() > STAYS_M)
                    .as(told)
                    .isEqualTo(
                            at(now, wish.part()).minus(at(places, wish.part())).length() > STAYS_M);
        }
    }

    private static Vec3 at(Map<String, Vec3> places, String id) {
        return Optional.ofNullable(places.get(id)).orElseThrow(() -> new AssertionError(id));
    }

    private static List<String> marks(String text, String pattern) {
        return Pattern.compile(pattern).matcher(text).results().map(r -> r.group()).toList();
    }
}
