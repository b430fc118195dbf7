package pippinry.demo;

import java.util.HashMap;
import java.util.Map;

/** Gives out numbers in their order and passes over those whose check character would be a star; these are written down. */
final class Numbers {

    private final Book book;

    private final Map<String, Integer> seedlings = new HashMap<>();
    private final Map<String, Character> copies = new HashMap<>();
    private final Map<String, Integer> boughs = new HashMap<>();
    private final Map<String, Integer> series = new HashMap<>();

    Numbers(Book book) {
        this.book = book;
    }

    /** Next seedling of a cross; neither it nor its copy A may have a star. */
    String seedling(String cross) {
        String number = nextSeedling(cross);
        while (isPassedOver(number) || isPassedOver(number, "A")) {
            number = nextSeedling(cross);
        }
        return number;
    }

    private String nextSeedling(String cross) {
        return "%s-%03d".formatted(cross, seedlings.merge(cross, 1, Integer::sum));
    }

    private boolean isPassedOver(String number) {
        boolean star = Check.isStar(number);
        if (star) {
            passOver(number, "its check character would be *");
        }
        return star;
    }

    private boolean isPassedOver(String number, String copy) {
        boolean star = Check.isStar(number + copy);
        if (star) {
            passOver(number, "the check character of its copy " + copy + " would be *");
        }
        return star;
    }

    private void passOver(String number, String reason) {
        book.add(book.row(Table.NEVERGIVEN).with("number", number).with("reason", reason));
    }

    /** Next plant of a genotype: A, B, C ... */
    String copy(String genotype) {
        char letter = copies.getOrDefault(genotype, '@');
        do {
            letter++;
        } while (isPassedOver(genotype + letter));
        if (letter > 'Z') {
            throw new IllegalStateException("no letters left for copies of " + genotype);
        }
        copies.put(genotype, letter);
        return genotype + letter;
    }

    /** The first graft of a seedling is never A: that is the seedling on its own roots, even after it is gone. */
    String graft(String seedling) {
        copies.putIfAbsent(seedling, 'A');
        return copy(seedling);
    }

    /** Next tagged branch of a cross, such as 26-014/3. */
    String bough(String cross) {
        String number;
        do {
            number = cross + "/" + boughs.merge(cross, 1, Integer::sum);
        } while (isPassedOver(number));
        return number;
    }

    /** Next of a running series, such as T-0401 or P25-03. */
    String next(String prefix, int digits) {
        String number;
        do {
            number = prefix + ("%0" + digits + "d").formatted(series.merge(prefix, 1, Integer::sum));
        } while (isPassedOver(number));
        return number;
    }
}
