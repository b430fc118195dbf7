package pippinry.demo;

import java.util.List;
import java.util.Locale;

/** The plain tables that Larkmoor is written in, with their columns and how many of the first of these are the key. */
enum Table {
    GENOTYPES(
            1,
            "code,name,crop,kind,ploidy,seed_parent,pollen_parent,seed_link,pollen_link,link_ground,sport_of,year,origin,note"),
    NAMES(2, "subject,name,kind,from,note"),
    ALLELES(2, "genotype,locus,alleles,series,basis,source"),
    GOALS(1, "trait,kind,direction,threshold,weight,note"),
    PLANTS(
            1,
            "tag,genotype,kind,rootstock,interstem,host,limb_height_m,limb_side,copy_of,made_on,status,ended_on,cause,certainty,note"),
    GRAFTS(2, "plant,date,method,hand,stock_lot,wood_from,wood_height_m,read_on,result,note"),
    BLOCKS(
            1,
            "block,x_m,y_m,rows,places_per_row,row_spacing_m,place_spacing_m,bearing_deg,headland_m,support,previous_crop,note"),
    ROWS(
            2,
            "block,row,kind,x_m,y_m,bearing_deg,places,spacing_m,first_place_m,gaps,counted_from,guards_count,training,note"),
    PLACES(5, "plant,block,row,place,from,to"),
    CROSSES(1, "code,year,seed_parent,pollen_parent,reason,seedlings_wanted,note"),
    POLLEN(1, "lot,genotype,source,stage,gathered_on,stored,vials,tested_on,germinated_pct,note"),
    POLLINATIONS(1, "tag,cross,plant,kind,flowers,set_fruits,harvested_fruits,loss_cause,note"),
    VISITS(3, "pollination,time,did,count,pollen_lot,hand,weather,note"),
    LOSSES(0, "subject,date,number,cause,note"),
    SEEDLOTS(1, "code,cross,source,harvested_on,fruits,seeds_full,seeds_empty,kept,sown_on,sown,emerged,potted,note"),
    CHILLING(2, "lot,from,to,how,temp_c"),
    EMERGENCE(2, "lot,date,emerged"),
    LOTMOVES(0, "from,to,date,seeds"),
    SCORES(0, "subject,trait,value,unit,date,time,part,scorer,instrument,sample,sheet,note"),
    SAMPLES(1, "sample,plant,picked_on,fruits,tasted,pressed,stored,store_c,note"),
    TAKEOUTS(2, "sample,out_on,fruits,note"),
    TASTINGS(0, "session,judge,order,winner,loser,note"),
    CARE(0, "date,where,what,product,dose,hours,cost,note"),
    EVENTS(0, "date,where,kind,lowest_c,harm,note"),
    MOVES(0, "date,subject,what,direction,person,amount,may_pass_on,protected,health_test,note"),
    WEATHER(1, "time,temp_c,wet_min,rain_mm,rh_pct"),
    DECISIONS(0, "genotype,decision,date,person,grounds"),
    TASKS(0, "batch,date,text,rule,outcome,done_on,person"),
    NOTES(0, "subject,date,text"),
    COSTS(0, "batch,date,text,amount"),
    NEVERGIVEN(1, "number,reason"),
    TRAITS(1, "code,name,scale,low,high,unit,direction,states");

    private final int key;
    private final List<String> columns;

    Table(int key, String columns) {
        this.key = key;
        this.columns = List.of(columns.split(","));
    }

    List<String> columns() {
        return columns;
    }

    /** The columns that tell one row from another; empty if two rows may be alike. */
    List<String> key() {
        return columns.subList(0, key);
    }

    String fileName() {
        return name().toLowerCase(Locale.ROOT) + ".csv";
    }
}
