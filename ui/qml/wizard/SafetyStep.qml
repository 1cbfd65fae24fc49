// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Sheet
import Wetfront.ViewModels

// Before any pump is stopped: what was agreed, what makes the site safe, what makes the system fit to be timed.
ScrollColumn {
    id: step

    required property VisitViewModel visit
    required property NumberPad pad

    // Names are typed here, before the gloves go on; later ones are chosen.
    NamesCard {
        title: qsTr("Who is here")
        lines: step.visit.sheet.personLines
        known: step.visit.sheet.knownPersons
        typeText: qsTr("Type a name")
        addText: qsTr("Add the person")
        firstLabel: qsTr("Name")
        secondLabel: qsTr("Role")
        readOnly: step.visit.frozen
        onAddAsked: (first, second) => problem = step.visit.sheet.addPerson(first, second)
        onRemoveAsked: row => step.visit.sheet.removePerson(row)
        Layout.fillWidth: true
    }
    FormCard {
        title: qsTr("Agreed with the grower")
        form: step.visit.agreement
        pad: step.pad
        readOnly: step.visit.frozen
        Layout.fillWidth: true
    }
    Card {
        title: qsTr("The site is safe, the system is fit to be timed")
        Layout.fillWidth: true
        Repeater {
            model: step.visit.safetyChecks
            delegate: TickLine {
                required property int index
                required property bool done
                enabled: !step.visit.frozen
                ticked: done
                onToggled: wanted => step.visit.safetyChecks.tick(index, wanted)
                Layout.fillWidth: true
            }
        }
    }
    CautionList {
        visit: step.visit
        Layout.fillWidth: true
    }
}
