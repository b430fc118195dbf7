package pippinry.nursery.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import pippinry.model.Program;
import pippinry.nursery.internal.account.Accounts;
import pippinry.nursery.internal.account.FamilyAccount;
import pippinry.nursery.internal.account.Funnel;
import pippinry.nursery.internal.account.Lossy;
import pippinry.nursery.internal.account.Step;
import pippinry.panels.Chapter;
import pippinry.panels.Page;

/** The book's chapter on what became of the flowers. */
@Component
public final class AccountChapter implements Chapter {

    private static final int PAPER_WIDTH = 483;

    @Activate
    public AccountChapter() {}

    @Override
    public int order() {
        return 40;
    }

    @Override
    public String title() {
        return "From flower to tree";
    }

    @Override
    public void write(Program program, LocalDate today, Page page) {
        List<FamilyAccount> accounts = Accounts.of(program);
        if (accounts.isEmpty()) {
            return;
        }
        Lossy lossy = Lossy.of(accounts);
        funnel(lossy, page);
        page.paragraph(
                "An empty cell was not counted, which is not the same as none; ≥ where some branch or lot was not. Controls are left"
                        + " out.");
        page.table(headers(), accounts.stream().map(AccountChapter::row).toList());
        behind(accounts, lossy, page);
    }

    private static void funnel(Lossy lossy, Page page) {
        Map<Step, Integer> sums = lossy.sums();
        if (sums.size() > 1) {
            Funnel funnel = new Funnel(sums);
            page.picture(
                    funnel,
                    funnel.aspect(PAPER_WIDTH),
                    "From flower to living seedling, sums of the " + lossy.whole()
                            + " crosses that were counted at every station. The width of a bar is its count.");
        }
    }

    private static List<String> headers() {
        List<String> headers = new ArrayList<>(List.of("Cross"));
        for (Step step : Step.values()) {
            headers.add(step.word());
        }
        return headers;
    }

    private static List<String> row(FamilyAccount account) {
        List<String> row = new ArrayList<>(List.of(account.cross().code().text()));
        for (Step step : Step.values()) {
            row.add(account.count(step).map(Object::toString).orElse(""));
        }
        return row;
    }

    private static void behind(List<FamilyAccount> accounts, Lossy lossy, Page page) {
        List<List<String>> rows = new ArrayList<>();
        for (FamilyAccount account : accounts) {
            lossy.worst(account)
                    .ifPresent(step -> rows.add(List.of(
                            account.cross().code().text(),
                            step.word(),
                            share(step, account.share(step)),
                            share(step, OptionalDouble.of(lossy.usual(step))))));
        }
        if (!rows.isEmpty()) {
            page.heading("Where crosses fell behind");
            page.paragraph(
                    "The station at which a cross kept least of what went in, compared with all crosses here; told when"
                            + " it is a fifth or more below them. One tray, one night or one pollen lot can be behind it.");
            page.table(List.of("Cross", "At", "Here", "All crosses"), rows);
        }
    }

    private static String share(Step step, OptionalDouble share) {
        return step == Step.SEEDS
                ? String.format(Locale.ENGLISH, "%.1f per fruit", share.getAsDouble())
                : Math.round(share.getAsDouble() * 100) + " %";
    }
}
