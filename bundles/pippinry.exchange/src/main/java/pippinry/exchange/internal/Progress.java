package pippinry.exchange.internal;

import pippinry.commandline.Call;

/** Tells how far work is, a hundred times and not a million. */
final class Progress {

    private static final int STEPS = 100;

    private final Call call;
    private final String what;
    private int told = -1;

    Progress(Call call, String what) {
        this.call = call;
        this.what = what;
    }

    void tell(double done) {
        int step = (int) (done * STEPS);
        if (step > told) {
            told = step;
            call.progress(what, done);
        }
    }
}
