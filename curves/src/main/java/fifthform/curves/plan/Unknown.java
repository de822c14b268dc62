package fifthform.curves.plan;

/** What a plan has to assume, and how far each may be off, as one standard deviation. */
enum Unknown {
    /** How well the bath reaches the chocolate: stirring, wall, shape; logarithm. */
    CONTACT,
    /** Loss to the room, of bowl and bath; logarithm. */
    LOSS,
    /** The bath's temperature, K. */
    BATH,
    /** The chocolate's temperature, K. */
    BOWL,
    /** Mass of the chocolate; logarithm. */
    CHOCOLATE,
    /** Mass of the water; logarithm. */
    WATER,
    /** Boiling water that is poured: its mass and how hot it still is; logarithm. */
    POURED,
    /** Mass of the bowl; logarithm. */
    WALL,
    /** Mass of the pan; logarithm. */
    PAN,
    /** The room's temperature, K. */
    ROOM,
    /** The chocolate's temperature when the cold bath begins, K. */
    START,
    /** The seed's heat of melting; logarithm. */
    LATENT,
    /** How far the bowl coasts; logarithm. */
    COAST,
    /** Crystals that form meanwhile, in units of what is expected. */
    CRYSTALS
}
