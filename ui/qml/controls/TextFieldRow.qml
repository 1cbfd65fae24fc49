// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Wetfront.Theme

// A line of words, typed on the ordinary keyboard. `text` belongs to the page; edited() hands over what was typed when
// the reader presses Enter, leaves the field or pauses, so that nothing waits for a save button.
GridLayout {
    id: field

    required property string label
    property string text
    property string placeholder
    property string hint
    property string errorText
    property int maximumLength: 200
    property int handOverAfter: 1000  // ms without a key

    signal edited(string text)

    readonly property bool wide: width >= Theme.fieldWidth * 1.7

    columns: wide ? 2 : 1
    columnSpacing: Theme.space
    rowSpacing: Theme.spaceSmall

    property bool handingOver: false
    function handOver(): void {
        pause.stop();
        if (input.text === field.text)
            return;
        handingOver = true;
        field.edited(input.text);
        handingOver = false;
    }

    // While it is being typed in, the page's answer to what was handed over must not move the cursor. Any other new text
    // is shown, or leaving the field would enter the old one again.
    onTextChanged: if (!(handingOver && input.activeFocus))
        input.text = text

    Timer {
        id: pause
        interval: field.handOverAfter
        onTriggered: field.handOver()
    }
    ColumnLayout {
        spacing: 0
        Layout.fillWidth: true
        PlainWords {
            text: field.label
            Accessible.ignored: true
            Layout.fillWidth: true
        }
        PlainWords {
            visible: text.length > 0
            text: field.hint
            kind: "small"
            soft: true
            Accessible.ignored: true
            Layout.fillWidth: true
        }
    }
    T.TextField {
        id: input
        implicitHeight: Theme.target
        text: ""
        Component.onCompleted: text = field.text
        maximumLength: field.maximumLength
        placeholderText: field.placeholder
        horizontalAlignment: TextInput.AlignLeft
        verticalAlignment: TextInput.AlignVCenter
        leftPadding: Theme.space
        rightPadding: Theme.space
        font.family: Theme.family
        font.pixelSize: Theme.fontTitle
        color: enabled ? Theme.ink : Theme.disabledInk
        selectionColor: Theme.water
        selectedTextColor: Theme.waterPaper
        selectByMouse: true
        Accessible.name: field.label
        Accessible.description: field.hint
        onTextEdited: pause.restart()
        onEditingFinished: field.handOver()
        onActiveFocusChanged: if (!activeFocus)
            field.handOver()
        background: Rectangle {
            radius: Theme.radius
            color: input.enabled ? Theme.well : Theme.disabledGround
            border.width: field.errorText.length > 0 ? Theme.borderStrong : Theme.border
            border.color: field.errorText.length > 0 ? Theme.warning : Theme.line
            PlainWords {
                anchors.fill: parent
                anchors.leftMargin: Theme.space
                verticalAlignment: Text.AlignVCenter
                visible: input.text.length === 0
                text: input.placeholderText
                soft: true
                elide: Text.ElideRight
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
            FocusRing {
                visible: input.activeFocus
            }
        }
        Layout.fillWidth: !field.wide
        Layout.preferredWidth: field.wide ? Math.max(Theme.fieldWidth, field.width / 2) : -1
    }
    ErrorLine {
        text: field.errorText
        Layout.columnSpan: field.columns
        Layout.fillWidth: true
    }
}
