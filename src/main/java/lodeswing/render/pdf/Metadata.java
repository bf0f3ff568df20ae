package lodeswing.render.pdf;

import lodeswing.figure.AlternativeText;

/**
 * What a document says of itself in XMP (ISO 16684-1): title, language, and the standards it keeps
 * to, PDF/A-2a (ISO 19005-2) and PDF/UA-1 (ISO 14289-1), whose own name must be told as ISO
 * 19005-2, 6.6.2.3 asks. It holds no time, so that the same sheet has the same bytes.
 */
final class Metadata {

  private static final String UA_SCHEMA =
      """
      <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"\
       xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"\
       xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
      <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
      <pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
      <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
      <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
      <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
      <pdfaProperty:name>part</pdfaProperty:name>
      <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
      <pdfaProperty:category>internal</pdfaProperty:category>
      <pdfaProperty:description>Part of the standard</pdfaProperty:description>
      </rdf:li></rdf:Seq></pdfaSchema:property>
      </rdf:li></rdf:Bag></pdfaExtension:schemas>
      </rdf:Description>
      """;

  private Metadata() {}

  static String of(AlternativeText about) {
    var out = new StringBuilder(2048);
    out.append("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n");
    out.append("<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n");
    out.append("<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n");
    out.append("<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\"");
    out.append(" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\"");
    out.append(" xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\">\n");
    out.append("<dc:format>application/pdf</dc:format>\n");
    alternative(out, "title", about.title());
    alternative(out, "description", about.description());
    out.append("<dc:language><rdf:Bag><rdf:li>");
    escape(out, about.language());
    out.append("</rdf:li></rdf:Bag></dc:language>\n");
    out.append("<pdfaid:part>2</pdfaid:part>\n");
    out.append("<pdfaid:conformance>A</pdfaid:conformance>\n");
    out.append("<pdfuaid:part>1</pdfuaid:part>\n");
    out.append("</rdf:Description>\n").append(UA_SCHEMA);
    return out.append("</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"w\"?>").toString();
  }

  private static void alternative(StringBuilder out, String name, String text) {
    out.append("<dc:").append(name).append("><rdf:Alt><rdf:li xml:lang=\"x-default\">");
    escape(out, text);
    out.append("</rdf:li></rdf:Alt></dc:").append(name).append(">\n");
  }

  private static void escape(StringBuilder out, String text) {
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                default -> out.appendCodePoint(c);
              }
            });
  }
}
