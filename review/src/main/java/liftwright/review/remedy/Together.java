package liftwright.review.remedy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import liftwright.answer.Sentence;
import liftwright.rig.Change;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;

/**
 * Elements of one kind that a remedy changes all together.
 *
 * @param elements one for each place in the file, in the order of the wiring
 */
record Together<E extends Element>(Rig rig, List<E> elements) {

    Together {
        elements = List.copyOf(elements);
    }

    /** Those declared at some places of the file. */
    static <E extends Element> Together<E> at(Set<RigPath> places, Class<E> kind, Rig rig) {
        Map<RigPath, E> elements = new LinkedHashMap<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            for (Element element : chain.elements()) {
                if (kind.isInstance(element) && places.contains(element.declaredAt())) {
                    elements.putIfAbsent(element.declaredAt(), kind.cast(element));
                }
            }
        }
        return new Together<>(rig, List.copyOf(elements.values()));
    }

    Together<E> only(Predicate<E> wanted) {
        return new Together<>(rig, elements.stream().filter(wanted).toList());
    }

    List<RigPath> places() {
        return elements.stream().map(Element::declaredAt).toList();
    }

    /** What they are called, each name once. */
    String named(Function<E, String> name) {
        return String.join(" and ", elements.stream().map(name).distinct().toList());
    }

    /** The edits of all of them. */
    List<Change> each(Function<E, Stream<Change>> edits) {
        return elements.stream().flatMap(edits).toList();
    }

    /** Takes out what the file says of an element under some keys. */
    Stream<Change> without(E element, List<String> keys) {
        return keys.stream()
                .map(element.declaredAt()::child)
                .filter(at -> rig.declaration().at(at).isPresent())
                .map(Change.Remove::new);
    }

    /** A way to change them; none where there are none. */
    List<Candidate> candidate(
            int most,
            IntFunction<Sentence> name,
            Sentence step,
            IntFunction<List<Change>> changes) {
        return elements.isEmpty() ? List.of() : List.of(new Candidate(most, name, step, changes));
    }
}
