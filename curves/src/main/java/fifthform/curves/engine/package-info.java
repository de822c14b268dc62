/** The whole monitor as one pure function: state and input in, state and events out. */
package fifthform.curves.engine;
