/**
 * The texts of the screens read at a desk, in one place and ready for translation: an enum of keys for each screen, and
 * beside it a properties file of the same name with the English words. A test holds the two together.
 */
package fifthform.monitor.texts;
