package fifthform.monitor.chart;

/** A text on a canvas and the size of its font, pixels: a canvas has no nodes that could be asked. */
public record Written(String words, double fontPixels) {}
