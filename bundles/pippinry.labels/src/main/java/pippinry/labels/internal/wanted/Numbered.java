package pippinry.labels.internal.wanted;

import java.util.List;
import java.util.Optional;
import pippinry.labels.internal.tag.Tag;
import pippinry.model.number.CheckCharacter;

/** Makes tags whose number carries its check character, where one can be reckoned. */
final class Numbered {
    private Numbered() {}

    static Tag tag(String number, String... lines) {
        Optional<String> check = CheckCharacter.isReckonable(number)
                ? Optional.of(String.valueOf(CheckCharacter.of(number)))
                : Optional.empty();
        return new Tag(number, check, List.of(lines));
    }

    /** True when the number may be given out. */
    static boolean mayBeGiven(String number) {
        return CheckCharacter.of(number) != CheckCharacter.STAR;
    }
}
