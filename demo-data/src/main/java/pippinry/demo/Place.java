package pippinry.demo;

/** One place of the ground, counted from the end that its row says. */
record Place(BlockPlan block, int row, int number) {

    @Override
    public String toString() {
        return block.code() + "/" + row + "/" + number;
    }
}
