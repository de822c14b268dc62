package fifthform.curves.contrast;

/** An interval of a difference, in the unit of what is compared. */
public record Span(double lower, double upper) {
    public Span {
        if (!(lower <= upper))
            throw new IllegalArgumentException("lower must not be above upper: " + lower + ", " + upper);
    }
}
