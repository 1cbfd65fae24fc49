// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Theme

// The sixteen fields of the number pad. Keys don't take the focus when pressed: typing on a keyboard goes on beside them.
Item {
    id: keys

    required property real keySize
    required property string mark
    property bool minusAllowed: false

    signal typed(string key)
    signal erased
    signal cancelled
    signal done

    readonly property real step: keySize + Theme.gap

    implicitWidth: 4 * keySize + 3 * Theme.gap
    implicitHeight: implicitWidth

    component Key: TouchTarget {
        id: key

        required property int column
        required property int row
        property int span: 1
        property string pictogram
        property string kind: "digit"

        readonly property color inkColour: !enabled ? Theme.disabledInk : kind === "done" ? Theme.waterPaper : Theme.ink

        x: column * keys.step
        y: row * keys.step
        width: span * keys.keySize + (span - 1) * Theme.gap
        height: keys.keySize
        padding: 0
        focusPolicy: Qt.TabFocus

        background: Rectangle {
            radius: Theme.radius
            color: !key.enabled ? Theme.disabledGround : key.kind === "done" ? (key.down ? Theme.ink : Theme.water) : key.down ? Theme.waterTint : key.kind === "digit" ? Theme.well : Theme.ground
            border.width: Theme.border
            border.color: key.kind === "done" && key.enabled ? Theme.water : Theme.line
        }
        contentItem: Item {
            Pictogram {
                anchors.centerIn: parent
                name: key.pictogram
                colour: key.inkColour
            }
            PlainWords {
                anchors.fill: parent
                visible: key.pictogram.length === 0
                text: key.text
                color: key.inkColour
                kind: key.kind === "digit" ? "display" : "title"
                font.bold: key.kind === "done"
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: Theme.fontSmall
                wrapMode: Text.NoWrap
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                Accessible.ignored: true
            }
        }
    }

    Repeater {
        model: 9
        delegate: Key {
            required property int index
            column: index % 3
            row: Math.floor(index / 3)
            text: index + 1
            onClicked: keys.typed(text)
        }
    }
    Key {
        column: 0
        row: 3
        text: keys.mark
        Accessible.name: text === ":" ? qsTr("colon") : text === "," ? qsTr("comma") : qsTr("point")
        onClicked: keys.typed(text)
    }
    Key {
        column: 1
        row: 3
        text: "0"
        onClicked: keys.typed(text)
    }
    Key {
        column: 3
        row: 0
        pictogram: "backspace"
        kind: "other"
        Accessible.name: qsTr("Erase")
        autoRepeat: true
        onClicked: keys.erased()
    }
    Key {
        column: 3
        row: 1
        visible: keys.minusAllowed
        pictogram: "minus"
        Accessible.name: qsTr("minus")
        onClicked: keys.typed("-")
    }
    Key {
        column: 3
        row: 2
        text: qsTr("Cancel")
        kind: "other"
        onClicked: keys.cancelled()
    }
    Key {
        column: 2
        row: 3
        span: 2
        text: qsTr("Done")
        kind: "done"
        onClicked: keys.done()
    }
}
