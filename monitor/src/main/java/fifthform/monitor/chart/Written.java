package fifthform.monitor.chart;

/** A text on a canvas, the size of its font and where its middle stands, pixels: a canvas has no nodes that could be asked. */
public record Written(String words, double fontPixels, double middleY) {}
