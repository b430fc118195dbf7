package pippinry.labels.internal.tag;

import pippinry.labels.internal.code.CodePicture;

/** What a code takes in mm with its quiet zone, and how much of that is quiet zone on one side. */
record CodeSize(double width, double height, double quietBeside, double quietAbove) {
    static final CodeSize NONE = new CodeSize(0, 0, 0, 0);

    static CodeSize of(CodePicture picture, double module) {
        double beside = picture.symbology().quietBeside() * module;
        double above = picture.symbology().quietAbove() * module;
        double dark = CodeSpot.darkHeight(picture, module);
        return new CodeSize(picture.columns() * module + 2 * beside, dark + 2 * above, beside, above);
    }
}
