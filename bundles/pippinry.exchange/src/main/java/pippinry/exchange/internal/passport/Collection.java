package pippinry.exchange.internal.passport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import pippinry.model.Program;
import pippinry.model.Row;
import pippinry.model.number.CheckCharacter;
import pippinry.model.record.FurtherName;
import pippinry.model.record.Genotype;
import pippinry.model.record.GenotypeKind;
import pippinry.model.record.Kinds;
import pippinry.model.record.Move;
import pippinry.model.record.Plant;
import pippinry.model.record.PlantStatus;
import pippinry.model.record.SeedLot;
import pippinry.model.value.PartialDate;

/**
 * Passports of the genotypes of which a plant lives here. Where the land lies is left out unless it is asked for; the country,
 * the breeder's name and an institute code are written only if they stand in the program's settings.
 */
public final class Collection {

    /** Settings that passports take over. */
    static final String COUNTRY = "country";

    static final String BREEDER = "breeder";
    static final String INSTITUTE = "institute_code";

    private static final String TREES = "20";
    private static final String OTHER = "99";

    private final Program program;
    private final boolean withSite;

    /** @param withSite whether coordinates and height of the land are written */
    public Collection(Program program, boolean withSite) {
        this.program = program;
        this.withSite = withSite;
    }

    public static List<String> header() {
        return Passport.header();
    }

    /** In the order of their codes. */
    public List<List<String>> rows() {
        return program.table(Kinds.GENOTYPES).stream()
                .filter(this::lives)
                .sorted(Comparator.comparing(Genotype::code))
                .map(genotype -> passport(genotype).row())
                .toList();
    }

    private boolean lives(Genotype genotype) {
        return plants(genotype).anyMatch(plant -> plant.status().orElse(PlantStatus.ALIVE) == PlantStatus.ALIVE);
    }

    private Stream<Plant> plants(Genotype genotype) {
        return program.table(Kinds.PLANTS).citing(genotype.code().text()).stream()
                .map(Row::value)
                .filter(plant -> plant.genotype().equals(Optional.of(genotype.code())));
    }

    private Passport passport(Genotype genotype) {
        Passport passport = new Passport();
        institute(passport);
        passport.put(Field.ACCENUMB, number(genotype));
        botany(passport, genotype);
        passport.put(Field.ACCENAME, names(genotype));
        acquired(genotype).ifPresent(date -> date(passport, Field.ACQDATE, date));
        origin(passport, genotype);
        status(passport, genotype);
        passport.put(Field.ANCEST, new Ancestry(program).of(genotype));
        donor(passport, genotype);
        passport.put(Field.OTHERNUMB, oldTags(genotype));
        passport.put(Field.STORAGE, TREES);
        return passport;
    }

    private void institute(Passport passport) {
        Optional<String> code = program.setting(INSTITUTE);
        code.ifPresentOrElse(
                known -> passport.put(Field.INSTCODE, known),
                () -> passport.remark(Field.INSTCODE, "private collection, no FAO code"));
    }

    private static String number(Genotype genotype) {
        String code = genotype.code().text();
        return CheckCharacter.isReckonable(code) ? code + "=" + CheckCharacter.of(code) : code;
    }

    private void botany(Passport passport, Genotype genotype) {
        String crop = genotype.crop().isEmpty() ? program.setting("crop").orElse("") : genotype.crop();
        boolean wild = genotype.kind().equals(Optional.of(GenotypeKind.SPECIES));
        Optional<Species> species = wild ? Species.named(genotype.name()) : Species.ofCrop(crop);
        species.ifPresentOrElse(
                known -> passport.put(Field.GENUS, known.genus())
                        .put(Field.SPECIES, known.epithet())
                        .put(Field.SPAUTHOR, known.author()),
                () -> passport.remark(Field.GENUS, wild ? "its name is not two words" : "crop " + crop));
        passport.put(Field.CROPNAME, crop);
    }

    private List<String> names(Genotype genotype) {
        List<String> names = new ArrayList<>();
        names.add(genotype.name().isEmpty() ? unnamed(genotype) : genotype.name());
        furtherNames(genotype, name -> !isOldTag(name)).forEach(names::add);
        return names;
    }

    private static String unnamed(Genotype genotype) {
        String kind = genotype.kind().map(GenotypeKind::word).orElse("genotype");
        return kind.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + kind.substring(1) + " " + genotype.code();
    }

    private Stream<String> furtherNames(Genotype genotype, Predicate<FurtherName> which) {
        return program.table(Kinds.NAMES).citing(genotype.code().text()).stream()
                .map(Row::value)
                .filter(which)
                .map(FurtherName::name);
    }

    private static boolean isOldTag(FurtherName name) {
        return name.kind().contains("tag");
    }

    /** A number of no institute stands behind a bare colon (from memory). */
    private List<String> oldTags(Genotype genotype) {
        return furtherNames(genotype, Collection::isOldTag)
                .map(tag -> ":" + tag)
                .toList();
    }

    /** The first plant here, by the earliest day it may have been made. */
    private Optional<PartialDate> acquired(Genotype genotype) {
        return plants(genotype).map(Plant::madeOn).flatMap(Optional::stream).min(Comparator.naturalOrder());
    }

    private static void date(Passport passport, Field field, PartialDate date) {
        passport.put(field, PassportDate.of(date));
        if (date.about()) {
            passport.remark(field, date.toString());
        }
    }

    private boolean isBredHere(Genotype genotype) {
        return cross(genotype).isPresent();
    }

    /** A seedling's number begins with that of its cross. */
    private Optional<String> cross(Genotype genotype) {
        String code = genotype.code().text();
        int end = code.lastIndexOf('-');
        return end < 0
                ? Optional.empty()
                : Optional.of(code.substring(0, end))
                        .filter(cross ->
                                program.table(Kinds.CROSSES).find(cross).isPresent());
    }

    private void origin(Passport passport, Genotype genotype) {
        if (!isBredHere(genotype)) {
            if (genotype.origin().matches("[A-Z]{3}")) {
                passport.put(Field.ORIGCTY, genotype.origin());
            }
            return;
        }
        program.setting(COUNTRY).ifPresent(country -> passport.put(Field.ORIGCTY, country));
        program.setting(BREEDER).ifPresent(name -> passport.put(Field.BREDNAME, Passport.single(name)));
        harvested(genotype).ifPresent(date -> date(passport, Field.COLLDATE, date));
        boolean controlled = !genotype.pollenParent().candidates().isEmpty();
        passport.put(Field.COLLSRC, OTHER).remark(Field.COLLSRC, controlled ? "own controlled cross" : "own seed");
        if (withSite) {
            Site.of(program).ifPresent(site -> site.write(passport));
        }
    }

    /** The day the seed was harvested, if all seed of the cross is of one day. */
    private Optional<PartialDate> harvested(Genotype genotype) {
        List<PartialDate> days = program
                .table(Kinds.SEEDLOTS)
                .citing(cross(genotype).orElseThrow())
                .stream()
                .map(Row::value)
                .map(SeedLot::harvestedOn)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
        return days.size() == 1 ? Optional.of(days.get(0)) : Optional.empty();
    }

    private void status(Passport passport, Genotype genotype) {
        SampleStatus status = SampleStatus.of(genotype);
        passport.put(Field.SAMPSTAT, status.code());
        if (!status.remark().isEmpty()) {
            passport.remark(Field.SAMPSTAT, status.remark());
        }
    }

    private void donor(Passport passport, Genotype genotype) {
        Stream<String> subjects = Stream.concat(
                Stream.of(genotype.code().text()),
                plants(genotype).map(plant -> plant.tag().text()));
        List<String> donors = subjects.flatMap(code -> program.table(Kinds.MOVES).citing(code).stream())
                .map(Row::value)
                .filter(move -> move.direction().equals("in") && !move.person().isEmpty())
                .map(Move::person)
                .distinct()
                .toList();
        passport.put(Field.DONORNAME, donors);
    }
}
