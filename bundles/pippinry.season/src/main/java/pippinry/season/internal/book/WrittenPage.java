package pippinry.season.internal.book;

import java.util.ArrayList;
import java.util.List;
import pippinry.panels.Page;
import pippinry.panels.Picture;

/** Takes down what a chapter writes, so that it can be set as HTML and on paper. */
final class WrittenPage implements Page {

    private final List<Block> blocks = new ArrayList<>();

    List<Block> blocks() {
        return blocks;
    }

    @Override
    public void heading(String text) {
        blocks.add(new Block.Heading(text));
    }

    @Override
    public void paragraph(String text) {
        blocks.add(new Block.Paragraph(text));
    }

    @Override
    public void caution(String text) {
        blocks.add(new Block.Caution(text));
    }

    @Override
    public void table(List<String> headers, List<List<String>> rows) {
        blocks.add(new Block.Grid(headers, rows));
    }

    @Override
    public void picture(Picture picture, double aspect, String caption) {
        blocks.add(new Block.Figure(picture, aspect, caption));
    }
}
