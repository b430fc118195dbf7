package pippinry.pedigree.internal.kinship;

/** The links of a draft; an open pollen parent is one more founder whose number is the draft's size. */
final class DraftLinks implements Links {
    private final PedigreeDraft draft;

    DraftLinks(PedigreeDraft draft) {
        this.draft = draft;
    }

    @Override
    public int count(int who) {
        if (who == draft.size()) return 0;
        if (draft.originOf(who) >= 0) return 1;
        return width(draft.seedOf(who)) + width(draft.pollenOf(who));
    }

    @Override
    public int from(int who, int link) {
        if (draft.originOf(who) >= 0) return draft.originOf(who);
        int seeds = width(draft.seedOf(who));
        return link < seeds ? member(draft.seedOf(who), link) : member(draft.pollenOf(who), link - seeds);
    }

    private int width(int parent) {
        Mixture candidates = draft.candidatesOf(parent);
        return candidates == null ? 1 : candidates.members().length;
    }

    private int member(int parent, int link) {
        if (parent == PedigreeDraft.OPEN) return draft.size();
        Mixture candidates = draft.candidatesOf(parent);
        return candidates == null ? parent : candidates.members()[link];
    }
}
