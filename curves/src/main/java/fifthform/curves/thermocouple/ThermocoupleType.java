package fifthform.curves.thermocouple;

/** Letter-designated thermocouples that kitchens meet (IEC 60584-1). */
public enum ThermocoupleType {
    K,
    J,
    T,
    N,
    E
}
