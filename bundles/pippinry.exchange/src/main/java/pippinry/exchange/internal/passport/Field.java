package pippinry.exchange.internal.passport;

/**
 * The fields of a passport in their order, by Alercia, A., Diulgheroff, S. & Mackay, M. 2015. FAO/Bioversity Multi-crop Passport
 * Descriptors V.2.1. FAO & Bioversity International, Rome.
 */
enum Field {
    PUID,
    INSTCODE,
    ACCENUMB,
    COLLNUMB,
    COLLCODE,
    COLLNAME,
    COLLINSTADDRESS,
    COLLMISSID,
    GENUS,
    SPECIES,
    SPAUTHOR,
    SUBTAXA,
    SUBTAUTHOR,
    CROPNAME,
    ACCENAME,
    ACQDATE,
    ORIGCTY,
    COLLSITE,
    DECLATITUDE,
    LATITUDE,
    DECLONGITUDE,
    LONGITUDE,
    COORDUNCERT,
    COORDDATUM,
    GEOREFMETH,
    ELEVATION,
    COLLDATE,
    BREDCODE,
    BREDNAME,
    SAMPSTAT,
    ANCEST,
    COLLSRC,
    DONORCODE,
    DONORNAME,
    DONORNUMB,
    OTHERNUMB,
    DUPLSITE,
    DUPLINSTNAME,
    STORAGE,
    MLSSTAT,
    REMARKS
}
