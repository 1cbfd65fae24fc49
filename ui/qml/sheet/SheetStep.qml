// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Who was there and with what, what is still open, the pages as they will be printed, and the signature.
ScrollColumn {
    id: step

    required property SessionViewModel session
    required property VisitViewModel visit
    required property ConfirmPanel confirm
    readonly property SheetViewModel sheet: visit.sheet
    property string outcome

    Component.onCompleted: sheet.showPages()

    // The pages follow what is entered, once it is still for a moment.
    Connections {
        target: step.sheet
        function onChanged(): void {
            redraw.restart();
        }
    }
    Timer {
        id: redraw
        interval: 300
        onTriggered: step.sheet.showPages()
    }

    function sign(person: int): void {
        outcome = sheet.sign(person);
        sheet.showPages();
    }

    // Signing is never refused, but it is not done by the way while something is open.
    function askToSign(person: int): void {
        if (sheet.notReady.length === 0)
            sign(person);
        else
            confirm.ask({
                question: qsTr("Something is still open. Sign all the same?"),
                detail: sheet.notReadyInShort,
                keepText: qsTr("Not yet"),
                doText: qsTr("Sign all the same"),
                act: () => step.sign(person)
            });
    }

    NamesCard {
        title: qsTr("Persons")
        lines: step.sheet.personLines
        known: step.sheet.knownPersons
        typeText: qsTr("Type a name")
        addText: qsTr("Add the person")
        firstLabel: qsTr("Name")
        secondLabel: qsTr("Role")
        readOnly: step.visit.frozen
        onAddAsked: (first, second) => problem = step.sheet.addPerson(first, second)
        onRemoveAsked: row => step.sheet.removePerson(row)
        Layout.fillWidth: true
    }
    NamesCard {
        title: qsTr("Instruments")
        lines: step.sheet.instrumentLines
        known: step.sheet.knownInstruments
        typeText: qsTr("Type an instrument")
        addText: qsTr("Add the instrument")
        firstLabel: qsTr("Instrument")
        secondLabel: qsTr("Last checked on")
        readOnly: step.visit.frozen
        onAddAsked: (first, second) => problem = step.sheet.addInstrument(first, second)
        onRemoveAsked: row => step.sheet.removeInstrument(row)
        Layout.fillWidth: true
    }
    NamesCard {
        title: qsTr("Open points")
        lines: step.sheet.openPoints
        known: [qsTr("Strainer to be cleaned"), qsTr("Outlets to be cleaned"), qsTr("Pads to be replaced"), qsTr("Pump to be looked at"), qsTr("Time the dry-out on a cooler day")]
        typeText: qsTr("Type an open point")
        addText: qsTr("Add the open point")
        firstLabel: qsTr("Open point")
        readOnly: step.visit.frozen
        onAddAsked: first => problem = step.sheet.addOpenPoint(first)
        onRemoveAsked: row => step.sheet.removeOpenPoint(row)
        Layout.fillWidth: true
    }
    ReaderCard {
        languages: step.sheet.languages
        language: step.sheet.language
        units: step.sheet.units
        paper: step.sheet.paper
        onLanguageChosen: value => step.sheet.language = value
        onUnitsChosen: value => step.sheet.units = value
        onPaperChosen: value => step.sheet.paper = value
        Layout.fillWidth: true
        PlainWords {
            visible: step.sheet.isSigned
            text: qsTr("Only the picture below follows: saved and printed is the sheet as it was signed.")
            Layout.fillWidth: true
        }
    }
    SignersCard {
        visit: step.visit
        onSignAsked: person => step.askToSign(person)
        Layout.fillWidth: true
    }
    SignaturePad {
        signatures: step.sheet.signatures
        pumpOffText: step.session.pumpOffText
        pumpOffUrgent: step.session.pumpOffUrgent
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        ActionButton {
            text: qsTr("Save as PDF")
            pictogram: "sheet"
            kind: "primary"
            onClicked: step.outcome = step.sheet.savePdf()
        }
        ActionButton {
            text: qsTr("Print")
            pictogram: "printer"
            onClicked: step.outcome = step.sheet.print()
        }
    }
    PlainWords {
        visible: text.length > 0
        text: step.outcome
        font.bold: true
        Layout.fillWidth: true
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    HandoutCard {
        handout: step.visit.handout
        Layout.fillWidth: true
    }
    Repeater {
        model: step.sheet.pageCount
        delegate: SheetPicture {
            required property int index
            source: "image://sheet/" + index + "/" + step.sheet.pagesRevision
            name: qsTr("page %1 of the sheet").arg(index + 1)
            Layout.fillWidth: true
        }
    }
}
