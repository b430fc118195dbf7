package pippinry.model.page;

import java.util.List;
import java.util.OptionalInt;
import pippinry.model.trie.IntTrie;
import pippinry.model.trie.TextTrie;

/**
 * The texts of a table, each once and numbered in the order in which they came. None is ever taken out or renumbered.
 * Immutable; a copy with one more shares all else.
 */
public final class Words {

    private static final Words NONE = new Words(IntTrie.empty(), TextTrie.empty());

    private final IntTrie<String> byNumber;
    private final TextTrie<Integer> byText;

    private Words(IntTrie<String> byNumber, TextTrie<Integer> byText) {
        this.byNumber = byNumber;
        this.byText = byText;
    }

    public static Words none() {
        return NONE;
    }

    /** @throws IllegalArgumentException if a text comes twice */
    public static Words of(List<String> texts) {
        TextTrie<Integer> byText = TextTrie.of(texts, number -> number);
        if (byText.size() != texts.size()) {
            throw new IllegalArgumentException("a word stands twice");
        }
        return new Words(IntTrie.of(texts), byText);
    }

    public int size() {
        return byNumber.size();
    }

    public String text(int number) {
        return byNumber.get(number).orElseThrow();
    }

    /** Empty if it is no word of this table. */
    public OptionalInt number(String text) {
        Integer number = byText.get(text).orElse(null);
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /** With this text as the next word. */
    public Words with(String text) {
        return new Words(byNumber.with(size(), text), byText.with(text, size()));
    }
}
