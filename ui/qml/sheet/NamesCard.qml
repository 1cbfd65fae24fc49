// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// A short list that can be added to by one press on what is known, or by typing.
Card {
    id: card

    required property var lines  // texts
    required property var known  // texts to choose from
    required property string typeText
    required property string addText
    required property string firstLabel
    property string secondLabel
    property bool readOnly: false
    property string problem
    property string first
    property string second
    property bool typing: false

    signal addAsked(string first, string second)
    signal removeAsked(int row)

    Repeater {
        model: card.lines
        delegate: RowLayout {
            id: line
            required property int index
            required property string modelData
            spacing: Theme.gap
            PlainWords {
                text: line.modelData
                Layout.fillWidth: true
            }
            ActionButton {
                visible: !card.readOnly
                pictogram: "bin"
                Accessible.name: qsTr("Take out %1").arg(line.modelData)
                onClicked: card.removeAsked(line.index)
            }
        }
    }
    Flow {
        visible: !card.readOnly
        spacing: Theme.gap
        Layout.fillWidth: true
        Repeater {
            model: card.known
            delegate: ActionButton {
                required property string modelData
                visible: !card.lines.some(line => line.startsWith(modelData))
                text: modelData
                pictogram: "plus"
                onClicked: card.addAsked(modelData, "")
            }
        }
        ActionButton {
            text: card.typing ? qsTr("Close") : card.typeText
            pictogram: card.typing ? "" : "pencil"
            onClicked: card.typing = !card.typing
        }
    }
    ColumnLayout {
        visible: card.typing && !card.readOnly
        spacing: Theme.gap
        Layout.fillWidth: true
        TextFieldRow {
            label: card.firstLabel
            text: card.first
            maximumLength: 200
            onEdited: text => card.first = text
            Layout.fillWidth: true
        }
        TextFieldRow {
            visible: card.secondLabel.length > 0
            label: card.secondLabel
            text: card.second
            maximumLength: 100
            onEdited: text => card.second = text
            Layout.fillWidth: true
        }
        ActionButton {
            text: card.addText
            kind: "primary"
            enabled: card.first.trim().length > 0
            onClicked: {
                card.addAsked(card.first, card.second);
                card.first = "";
                card.second = "";
                card.typing = false;
            }
        }
    }
    ErrorLine {
        text: card.problem
        Layout.fillWidth: true
    }
}
