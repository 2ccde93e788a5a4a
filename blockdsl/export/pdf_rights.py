"""What a PDF says of itself, for programs that ask: an XMP packet (ISO 16684-1) with Dublin Core's fields.

It also says that the file can be read aloud as PDF/UA-1 (ISO 14289-1) wants it, which holds for all that we print:
`tests/outside/test_pdf_tags.py` looks at every kind.
"""

from __future__ import annotations

from typing import Final
from xml.sax.saxutils import escape

from blockdsl.export.pdf_objects import ObjectFile
from blockdsl.marks.display_list import Publication

_PACKET: Final = """<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
 xmlns:xmpRights="http://ns.adobe.com/xap/1.0/rights/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
{creator}{rights}<pdfuaid:part>1</pdfuaid:part>
</rdf:Description>
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="r"?>
"""
_RIGHTS: Final = """<dc:rights><rdf:Alt><rdf:li xml:lang="x-default">{rights}</rdf:li></rdf:Alt></dc:rights>
<xmpRights:Marked>True</xmpRights:Marked>
"""


def rights(file: ObjectFile, document: Publication) -> bytes:
    """The catalogue's entry for the packet."""
    author = escape(document.author)
    creator = f"<dc:creator><rdf:Seq><rdf:li>{author}</rdf:li></rdf:Seq></dc:creator>\n" if author else ""
    told = _RIGHTS.format(rights=escape(document.rights)) if document.rights else ""
    packet = _PACKET.format(title=escape(document.title), creator=creator, rights=told)
    return b"/Metadata %d 0 R" % file.add_stream(b"/Type/Metadata/Subtype/XML", packet.encode())
