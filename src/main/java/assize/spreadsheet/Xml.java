package assize.spreadsheet;

import java.io.ByteArrayInputStream;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The elements of one part of a workbook, one after the other, by their names alone. No document
 * type is read, so that nothing outside is opened and nothing expands.
 */
final class Xml {
  /** Beginnings and ends of elements in one part. */
  static final int MOST_EVENTS = 2_000_000;

  static final int DEEPEST = 64;

  private final XMLStreamReader reader;
  private int events;
  private int depth;

  private Xml(XMLStreamReader reader) {
    this.reader = reader;
  }

  static Xml of(byte[] part) throws UnreadableTableException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
    // Newer Javas count each "&amp;" of the document here; without a document type none expands.
    factory.setProperty("jdk.xml.maxGeneralEntitySizeLimit", "0");
    factory.setProperty("jdk.xml.totalEntitySizeLimit", "0");
    try {
      return new Xml(factory.createXMLStreamReader(new ByteArrayInputStream(part)));
    } catch (XMLStreamException e) {
      throw notXml();
    }
  }

  private static UnreadableTableException notXml() {
    return UnreadableTableException.damaged("a part of it is not XML");
  }

  /** Goes on to the next beginning or end of an element; false where the part ends. */
  boolean next() throws UnreadableTableException {
    try {
      while (reader.hasNext()) {
        int event = reader.next();
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
          throw UnreadableTableException.notATable(
              "this workbook declares a document type, which no spreadsheet does",
              "do not use it; ask for it anew from someone you trust");
        }
        if (event == XMLStreamConstants.START_ELEMENT || event == XMLStreamConstants.END_ELEMENT) {
          count(event == XMLStreamConstants.START_ELEMENT);
          return true;
        }
      }
      return false;
    } catch (XMLStreamException | RuntimeException e) {
      // Beside its own exceptions the library lets some of the JDK's through (bad character codes).
      throw notXml();
    }
  }

  private void count(boolean begins) throws UnreadableTableException {
    depth += begins ? 1 : -1;
    if (++events > MOST_EVENTS) {
      throw UnreadableTableException.tooMuch();
    }
    if (depth > DEEPEST) {
      throw UnreadableTableException.damaged("a part of it is nested too deeply");
    }
  }

  boolean begins(String name) {
    return reader.isStartElement() && reader.getLocalName().equals(name);
  }

  boolean ends(String name) {
    return reader.isEndElement() && reader.getLocalName().equals(name);
  }

  /** Returns an attribute by its name, of whatever namespace. */
  Optional<String> attribute(String name) {
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      if (reader.getAttributeLocalName(i).equals(name)) {
        return Optional.of(reader.getAttributeValue(i));
      }
    }
    return Optional.empty();
  }

  /** Returns the text up to the end of an element that has just begun and holds text alone. */
  String text() throws UnreadableTableException {
    depth--;
    try {
      return reader.getElementText();
    } catch (XMLStreamException | RuntimeException e) {
      throw notXml();
    }
  }
}
