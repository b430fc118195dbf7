package pippinry.model.record;

import java.lang.invoke.MethodHandles;
import java.util.List;
import java.util.Optional;

/** Every kind of record that a program holds, in the order in which their tables are written. */
public final class Kinds {

    private static final MethodHandles.Lookup HERE = MethodHandles.lookup();

    public static final Kind<Genotype> GENOTYPES = kind("genotypes", Genotype.class, 1);
    public static final Kind<FurtherName> NAMES = kind("names", FurtherName.class, 2);
    public static final Kind<Alleles> ALLELES = kind("alleles", Alleles.class, 2);
    public static final Kind<Goal> GOALS = kind("goals", Goal.class, 1);
    public static final Kind<Plant> PLANTS = kind("plants", Plant.class, 1);
    public static final Kind<Graft> GRAFTS = kind("grafts", Graft.class, 2);
    public static final Kind<Block> BLOCKS = kind("blocks", Block.class, 1);
    public static final Kind<BlockRow> ROWS = kind("rows", BlockRow.class, 2);
    public static final Kind<Occupancy> PLACES = kind("places", Occupancy.class, 5);
    public static final Kind<Cross> CROSSES = kind("crosses", Cross.class, 1);
    public static final Kind<PollenLot> POLLEN = kind("pollen", PollenLot.class, 1);
    public static final Kind<Pollination> POLLINATIONS = kind("pollinations", Pollination.class, 1);
    public static final Kind<Visit> VISITS = kind("visits", Visit.class, 3);
    public static final Kind<Loss> LOSSES = kind("losses", Loss.class, 0);
    public static final Kind<SeedLot> SEEDLOTS = kind("seedlots", SeedLot.class, 1);
    public static final Kind<Chilling> CHILLING = kind("chilling", Chilling.class, 2);
    public static final Kind<Emergence> EMERGENCE = kind("emergence", Emergence.class, 2);
    public static final Kind<LotMove> LOTMOVES = kind("lotmoves", LotMove.class, 0);
    public static final Kind<Score> SCORES = kind("scores", Score.class, 0);
    public static final Kind<Sample> SAMPLES = kind("samples", Sample.class, 1);
    public static final Kind<TakeOut> TAKEOUTS = kind("takeouts", TakeOut.class, 2);
    public static final Kind<Tasting> TASTINGS = kind("tastings", Tasting.class, 0);
    public static final Kind<Care> CARE = kind("care", Care.class, 0);
    public static final Kind<Event> EVENTS = kind("events", Event.class, 0);
    public static final Kind<Move> MOVES = kind("moves", Move.class, 0);
    public static final Kind<WeatherHour> WEATHER = kind("weather", WeatherHour.class, 1);
    public static final Kind<Decision> DECISIONS = kind("decisions", Decision.class, 0);
    public static final Kind<Task> TASKS = kind("tasks", Task.class, 0);
    public static final Kind<Note> NOTES = kind("notes", Note.class, 0);
    public static final Kind<Photo> PHOTOS = kind("photos", Photo.class, 0);
    public static final Kind<Cost> COSTS = kind("costs", Cost.class, 0);
    public static final Kind<OwnTrait> TRAITS = kind("traits", OwnTrait.class, 1);
    public static final Kind<Sheet> SHEETS = kind("sheets", Sheet.class, 1);
    public static final Kind<NeverGiven> NEVERGIVEN = kind("nevergiven", NeverGiven.class, 1);
    public static final Kind<Setting> SETTINGS = kind("settings", Setting.class, 1);

    /** All of them. */
    public static final List<Kind<?>> ALL = List.of(
            GENOTYPES,
            NAMES,
            ALLELES,
            GOALS,
            PLANTS,
            GRAFTS,
            BLOCKS,
            ROWS,
            PLACES,
            CROSSES,
            POLLEN,
            POLLINATIONS,
            VISITS,
            LOSSES,
            SEEDLOTS,
            CHILLING,
            EMERGENCE,
            LOTMOVES,
            SCORES,
            SAMPLES,
            TAKEOUTS,
            TASTINGS,
            CARE,
            EVENTS,
            MOVES,
            WEATHER,
            DECISIONS,
            TASKS,
            NOTES,
            PHOTOS,
            COSTS,
            TRAITS,
            SHEETS,
            NEVERGIVEN,
            SETTINGS);

    private Kinds() {}

    private static <T extends Record> Kind<T> kind(String table, Class<T> type, int key) {
        return new Kind<>(HERE, table, type, key);
    }

    /** The kind with this table name. */
    public static Optional<Kind<?>> named(String table) {
        return ALL.stream().filter(kind -> kind.table().equals(table)).findFirst();
    }

    /** The kind that keeps records of this class; a record class that is not ours is a mistake of the caller. */
    public static Kind<?> of(Class<?> type) {
        return ALL.stream().filter(kind -> kind.type() == type).findFirst().orElseThrow();
    }
}
