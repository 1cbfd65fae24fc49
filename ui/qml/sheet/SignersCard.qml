// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Charts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// What is open before signing, who signs, and the signatures: drawn on the glass, or left to be written on paper.
Card {
    id: card

    required property VisitViewModel visit
    readonly property SheetViewModel sheet: visit.sheet
    readonly property SignatureViewModel signatures: sheet.signatures

    signal signAsked(int person)

    title: sheet.isSigned ? sheet.signedBy : visit.frozen ? qsTr("Not signed") : qsTr("Sign")

    Repeater {
        model: card.visit.frozen ? [] : card.sheet.notReady
        delegate: PlainWords {
            required property string modelData
            text: modelData
            color: Theme.warningInk
            Layout.fillWidth: true
        }
    }
    PlainWords {
        visible: !card.visit.frozen
        text: card.sheet.persons.length > 0 ? qsTr("Signing freezes the visit; a correction is a new sheet that names this one. Draw signatures first, then sign: whatever is changed in between takes them off.") : qsTr("Name the person who signs first.")
        Layout.fillWidth: true
    }
    PlainWords {
        visible: text.length > 0
        text: card.signatures.notice
        color: Theme.warningInk
        font.bold: true
        Layout.fillWidth: true
    }
    // By their number: a line that stays keeps the keyboard when a signature comes or goes.
    Repeater {
        model: card.signatures.signers.length
        delegate: ColumnLayout {
            id: signer
            required property int index
            readonly property var told: card.signatures.signers[index] ?? ({
                    line: "",
                    state: "",
                    drawn: false,
                    strokes: []
                })
            readonly property bool drawn: told["drawn"]
            spacing: Theme.gap
            Layout.fillWidth: true

            RowLayout {
                spacing: Theme.space
                Layout.fillWidth: true
                // There before anything is drawn: what is below does not move away from under the finger.
                Rectangle {
                    visible: signer.drawn || !card.visit.frozen
                    color: Theme.well
                    border.width: Theme.border
                    border.color: Theme.line
                    Layout.preferredHeight: Theme.thumbnailHeight
                    Layout.preferredWidth: Theme.thumbnailHeight * picture.aspect
                    SignatureItem {
                        id: picture
                        visible: signer.drawn
                        anchors.fill: parent
                        strokes: signer.told["strokes"]
                        lineColor: Theme.ink
                        thickness: Theme.border
                        Accessible.role: Accessible.Graphic
                        Accessible.name: qsTr("signature of %1").arg(signer.told["line"])
                    }
                }
                ColumnLayout {
                    spacing: Theme.spaceSmall
                    Layout.fillWidth: true
                    PlainWords {
                        text: signer.told["line"]
                        font.bold: true
                        Layout.fillWidth: true
                    }
                    PlainWords {
                        visible: text.length > 0
                        text: signer.told["state"]
                        soft: true
                        Layout.fillWidth: true
                    }
                }
            }
            Flow {
                visible: !card.visit.frozen
                spacing: Theme.gap
                Layout.fillWidth: true
                ActionButton {
                    text: signer.drawn ? qsTr("Draw again") : qsTr("Draw the signature")
                    Accessible.name: Sentence.fill("%1: %2", [text, signer.told["line"]])
                    onClicked: card.signatures.draw(signer.index)
                }
                ActionButton {
                    visible: signer.drawn
                    pictogram: "bin"
                    Accessible.name: qsTr("Take off the signature of %1").arg(signer.told["line"])
                    onClicked: card.signatures.takeOff(signer.index)
                }
                ActionButton {
                    text: qsTr("Sign as %1").arg(card.sheet.persons[signer.index] ?? "")
                    pictogram: "pencil"
                    onClicked: card.signAsked(signer.index)
                }
            }
        }
    }
    PlainWords {
        visible: text.length > 0
        text: card.signatures.leftOut
        soft: true
        Layout.fillWidth: true
    }
}
